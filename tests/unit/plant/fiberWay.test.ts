import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { fiberPieces, fiberToM } from "../../../core/plant/fiberAlong.ts";
import { fiberTrace } from "../../../core/plant/fiberTrace.ts";
import { type FiberEnd, fiberWay } from "../../../core/plant/fiberWay.ts";
import { fiberAtPlace, placeOnFiber } from "../../../core/plant/placeOnFiber.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { fiberUseOf, rowOf, withLateral } from "../../fixtures/route/faultyRoutes.ts";

/** A terminal on the lateral, 10 m out, on the fiber that the parent cable feeds. */
function withLateralTerminal(): Route {
  const terminal = { ...rowOf(smallRoute(), "terminal", "terminal-1"), id: "terminal-3", name: "T3" };
  const splitter = { ...rowOf(smallRoute(), "splitter", "splitter-1"), id: "splitter-3", terminalId: "terminal-3" };
  const use = { purpose: "terminal", terminalId: "terminal-3", splitterId: "splitter-3" } as const;
  const route = withRows(withLateral(), "splitter", [splitter]);
  return withRows(route, "terminal", [{ ...terminal, cableId: "cable-2", spanId: "span-4", offsetM: 10 }], "fiberUse", [
    fiberUseOf({ id: "use-3", cableId: "cable-2", fiber: 1, ...use }),
  ]);
}

function wayOf(route: Route, cableId: string, fiber: number, fromEnd: FiberEnd = "feed") {
  const plant = openPlant(route);
  const way = fiberWay(plant, { cableId, fiber }, fromEnd);
  if (!way) throw new Error("the fiber has no way");
  return { plant, way };
}

describe("the way of a fiber", () => {
  it("begins with the connection at the hub and ends in the splitter it feeds, as long as the light reckons it", () => {
    const { plant, way } = wayOf(smallRoute(), "cable-1", 2);
    expect(way.landmarks.map((one) => [one.kind, one.row.id])).toEqual([
      ["connection", "feed-2"],
      ["splitter", "terminal-2"],
    ]);
    const trace = fiberTrace(plant, "use-2");
    expect(trace.kind === "known" && trace.fiberM).toBeCloseTo(way.lengthM, 9);
    expect(way.landmarks.at(-1)?.fiberM).toBe(way.lengthM);
  });

  it("goes on through a closure into the lateral, whichever of its cables is asked about", () => {
    const { plant, way } = wayOf(withLateralTerminal(), "cable-2", 1);
    expect(way.landmarks.map((one) => [one.kind, one.row.id])).toEqual([
      ["connection", "feed-1"],
      ["splice", "closure-1"],
      ["splitter", "terminal-3"],
    ]);
    expect(way).toEqual(wayOf(withLateralTerminal(), "cable-1", 25).way);
    const trace = fiberTrace(plant, "use-3");
    expect(trace.kind === "known" && trace.fiberM).toBeCloseTo(way.lengthM, 9);
  });

  it("from the far end is the same way turned round", () => {
    const { way } = wayOf(withLateralTerminal(), "cable-2", 1);
    const { way: back } = wayOf(withLateralTerminal(), "cable-2", 1, "far");
    expect(back.landmarks.map((one) => one.kind)).toEqual(["splitter", "splice", "connection"]);
    expect(back.landmarks[1]?.fiberM).toBeCloseTo(way.lengthM - (way.landmarks[1]?.fiberM ?? 0), 9);
  });

  it("of a spare fiber ends with the cable, all coils counted", () => {
    const { way } = wayOf(smallRoute(), "cable-1", 40);
    expect(way.landmarks.map((one) => [one.kind, one.row.table])).toEqual([
      ["connection", "cable"],
      ["end", "cable"],
    ]);
    // three spans strung at a sag of 1 %, two coils, a hundredth more fiber than sheath
    expect(way.lengthM).toBeCloseTo((135 * (1 + (8 / 3) * 0.01 ** 2) + 2 * 6.096) * 1.01, 9);
  });

  it("is not told where the cable does not pass, or is fed from itself", () => {
    const gone = without(smallRoute(), "cableRun", "run-2");
    expect(fiberWay(openPlant(gone), { cableId: "cable-1", fiber: 1 }, "feed")).toBeNull();
    let loop = changed(withLateralTerminal(), "closure", "closure-1", { cableId: "cable-2", spanId: "span-4" });
    loop = changed(loop, "fiberUse", "lateral-25", { cableId: "cable-2", fiber: 1 });
    expect(fiberWay(openPlant(loop), { cableId: "cable-2", fiber: 1 }, "feed")).toBeNull();
  });
});

describe("a point of a fiber", () => {
  it("is behind the pole the light passed last, from either end", () => {
    const { plant, way } = wayOf(smallRoute(), "cable-1", 40);
    const fiberM = fiberToM(plant, "cable-1", "span-1", 30) ?? 0;
    const place = placeOnFiber(plant, way, fiberM);
    expect(place).toMatchObject({ spanId: "span-1", pastPoleId: "pole-1", towardsPoleId: "pole-2", slackId: null });
    expect(place?.offsetM).toBeCloseTo(30, 9);
    expect(place?.pastPoleM).toBeCloseTo(30, 9);
    const { way: back } = wayOf(smallRoute(), "cable-1", 40, "far");
    const fromFar = placeOnFiber(plant, back, way.lengthM - fiberM);
    expect(fromFar).toMatchObject({ pastPoleId: "pole-2", towardsPoleId: "pole-1" });
    expect(fromFar?.pastPoleM).toBeCloseTo(15, 9);
  });

  it("may be in a coil, and is at an end where it lies beyond it", () => {
    const { plant, way } = wayOf(smallRoute(), "cable-1", 40);
    const behindCoilM = fiberToM(plant, "cable-1", "span-2", 0.9144) ?? 0;
    expect(placeOnFiber(plant, way, behindCoilM - 3)).toMatchObject({ slackId: "coil-1", spanId: "span-2" });
    expect(placeOnFiber(plant, way, -5)).toMatchObject({ spanId: "span-1", offsetM: 0 });
    expect(placeOnFiber(plant, way, 1e6)).toMatchObject({ spanId: "span-3", offsetM: 45 });
  });

  it("is found again from its place", () => {
    for (const fromEnd of ["feed", "far"] as const) {
      const { plant, way } = wayOf(withLateralTerminal(), "cable-2", 1, fromEnd);
      for (let share = 0.02; share < 1; share += 0.05) {
        const place = placeOnFiber(plant, way, share * way.lengthM);
        if (!place || place.slackId !== null) continue;
        expect(fiberAtPlace(plant, way, place.spanId, place.offsetM)).toBeCloseTo(share * way.lengthM, 6);
      }
    }
  });
});

it("the pieces of a fiber add up to what is reckoned at every point", () => {
  const plant = openPlant(smallRoute());
  const pieces = fiberPieces(plant, "cable-1");
  expect(pieces.length).toBe(7);
  for (const { spanId, startM, endM, startOffsetM, endOffsetM } of pieces.filter((one) => one.slackId === null)) {
    const middleM = fiberToM(plant, "cable-1", spanId, (startOffsetM + endOffsetM) / 2);
    expect(middleM).toBeCloseTo((startM + endM) / 2, 9);
  }
});

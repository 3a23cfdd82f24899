import { describe, expect, it } from "vitest";
import {
  cablePath,
  cablesInSpan,
  closuresAlong,
  coilsAlong,
  poleStationM,
  sheathLength,
  sheathToM,
  stationM,
  terminalsAlong,
} from "../../../core/plant/cablePath.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, without } from "../../fixtures/route/buildRoute.ts";
import { withClosure, withLateral } from "../../fixtures/route/faultyRoutes.ts";

/** The small route with the cable fed from its last pole. */
function fedFromFarEnd() {
  return [1, 2, 3].reduce(
    (route, n) => changed(route, "cableRun", `run-${n}`, { sequence: 4 - n, reversed: true }),
    smallRoute(),
  );
}

describe("the way of a cable", () => {
  it("counts stations from the feed end, span by span", () => {
    const path = cablePath(openPlant(smallRoute()), "cable-1");
    expect(path.steps.map(({ spanId, startM, inPoleId }) => ({ spanId, startM, inPoleId }))).toEqual([
      { spanId: "span-1", startM: 0, inPoleId: "pole-1" },
      { spanId: "span-2", startM: 45, inPoleId: "pole-2" },
      { spanId: "span-3", startM: 90, inPoleId: "pole-3" },
    ]);
    expect([path.lengthM, path.gapAtPoleId]).toEqual([135, null]);
  });

  it("runs the other way where the feed is at the far end", () => {
    const plant = openPlant(fedFromFarEnd());
    expect(cablePath(plant, "cable-1").gapAtPoleId).toBeNull();
    expect(stationM(plant, "cable-1", "span-3", 40)).toBe(5);
    expect(poleStationM(plant, "cable-1", "pole-1")).toBe(135);
  });

  it("names the pole where two spans do not meet", () => {
    expect(cablePath(openPlant(without(smallRoute(), "cableRun", "run-2")), "cable-1").gapAtPoleId).toBe("pole-2");
  });

  it("has no station where the cable does not pass", () => {
    const plant = openPlant(withLateral());
    expect(stationM(plant, "cable-1", "span-4", 3)).toBeNull();
    expect(poleStationM(plant, "cable-1", "pole-5")).toBeNull();
    expect(sheathToM(plant, "cable-1", "span-4", 3)).toBeNull();
  });

  it("lists what hangs on it from the feed end", () => {
    const plant = openPlant(withClosure(fedFromFarEnd()));
    expect(terminalsAlong(plant, "cable-1")).toEqual(["terminal-2", "terminal-1"]);
    expect(coilsAlong(plant, "cable-1")).toEqual(["coil-2", "coil-1"]);
    expect(closuresAlong(plant, "cable-1")).toEqual(["closure-1"]);
  });

  it("lists every cable of a span once", () => {
    expect(cablesInSpan(openPlant(withLateral()), "span-4")).toEqual(["cable-2"]);
    expect(cablesInSpan(openPlant(smallRoute()), "span-1")).toEqual(["cable-1"]);
  });

  it("adds coils to the spans for the sheath", () => {
    const { spansM, coilsM, totalM } = sheathLength(openPlant(smallRoute()), "cable-1");
    expect([spansM, coilsM, totalM]).toEqual([135, 12.192, 147.192]);
  });

  it("counts the coils passed on the way, the one at the point included", () => {
    const plant = openPlant(smallRoute());
    expect(sheathToM(plant, "cable-1", "span-2", 0.5)).toBe(45.5);
    expect(sheathToM(plant, "cable-1", "span-2", 0.9144)).toBeCloseTo(45.9144 + 6.096, 9);
    expect(sheathToM(plant, "cable-1", "span-3", 45)).toBeCloseTo(147.192, 9);
  });

  it("counts no coil that hangs where the cable does not pass", () => {
    const plant = openPlant(changed(withLateral(), "slack", "coil-1", { spanId: "span-4" }));
    expect(sheathToM(plant, "cable-1", "span-3", 45)).toBeCloseTo(135 + 6.096, 9);
  });
});

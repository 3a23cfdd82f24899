import { describe, expect, it } from "vitest";
import {
  feedOfUse,
  fiberTrace,
  fiberUseStationM,
  freeFibers,
  parentUse,
  rivalUses,
} from "../../../core/plant/fiberTrace.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { fiberUseOf, rowOf, withLateral } from "../../fixtures/route/faultyRoutes.ts";

/** A terminal on the lateral, 10 m out, on the fiber that the parent cable feeds. */
function withLateralTerminal() {
  const terminal = { ...rowOf(smallRoute(), "terminal", "terminal-1"), id: "terminal-3", name: "T3" };
  const use = fiberUseOf({ id: "use-3", cableId: "cable-2", fiber: 1, purpose: "terminal", terminalId: "terminal-3" });
  return withRows(
    withLateral(),
    "terminal",
    [{ ...terminal, cableId: "cable-2", spanId: "span-4", offsetM: 10 }],
    "fiberUse",
    [use],
  );
}

/** A span strung at a sag of 1 % is longer by this. */
const hung = 1 + (8 / 3) * 0.01 ** 2;

describe("the way of a fiber back to the hub", () => {
  it("is sheath as it hangs and coils up to the terminal, a hundredth longer, with one splice", () => {
    const trace = fiberTrace(openPlant(smallRoute()), "use-1");
    expect(trace).toMatchObject({ kind: "known", feedId: "feed-1", spliceCount: 1 });
    expect(trace.kind === "known" && trace.fiberM).toBeCloseTo((45.9144 * hung + 6.096) * 1.01, 9);
  });

  it("goes on through the closure into the parent cable", () => {
    const trace = fiberTrace(openPlant(withLateralTerminal()), "use-3");
    expect(trace).toMatchObject({ kind: "known", feedId: "feed-1", spliceCount: 2 });
    expect(trace.kind === "known" && trace.fiberM).toBeCloseTo((10 + 5) * hung * 1.01, 9);
    expect(feedOfUse(openPlant(withLateralTerminal()), "use-3")).toBe("feed-1");
  });

  it("is broken where the parent cable is not spliced to the fiber", () => {
    const plant = openPlant(changed(withLateralTerminal(), "fiberUse", "use-3", { fiber: 2 }));
    expect(fiberTrace(plant, "use-3")).toEqual({
      kind: "unknown",
      why: "Fiber 2 of cable C2 is not spliced to the cable it comes from.",
    });
    expect(feedOfUse(plant, "use-3")).toBeNull();
  });

  it("is broken at a parent fiber without a hub output", () => {
    const plant = openPlant(changed(withLateralTerminal(), "fiberUse", "lateral-25", { feedId: null }));
    expect(fiberTrace(plant, "use-3")).toEqual({ kind: "unknown", why: "Fiber 25 of cable C1 has no hub output." });
  });

  it("is broken where the fiber is used off its cable", () => {
    const plant = openPlant(without(smallRoute(), "cableRun", "run-2"));
    expect(fiberTrace(plant, "use-1")).toEqual({
      kind: "unknown",
      why: "Fiber 1 of cable C1 is used where the cable does not pass.",
    });
  });

  it("is broken where a cable is fed from itself", () => {
    let route = changed(withLateralTerminal(), "closure", "closure-1", { cableId: "cable-2", spanId: "span-4" });
    route = changed(route, "fiberUse", "lateral-25", { cableId: "cable-2", fiber: 1 });
    expect(fiberTrace(openPlant(route), "use-3")).toEqual({ kind: "unknown", why: "Cable C2 is fed from itself." });
  });
});

describe("a use of a fiber", () => {
  it("takes it out where its terminal hangs, or its closure", () => {
    const plant = openPlant(withLateral());
    expect(fiberUseStationM(plant, "use-2")).toBe(90.9144);
    expect(fiberUseStationM(plant, "lateral-25")).toBe(5);
  });

  it("takes it out nowhere when it is only reserved", () => {
    const held = fiberUseOf({ id: "held", fiber: 9, purpose: "reserved" });
    expect(fiberUseStationM(openPlant(withRows(smallRoute(), "fiberUse", [held])), "held")).toBeNull();
  });

  it("has rivals on the same fiber of the same cable only", () => {
    const rival = fiberUseOf({ id: "rival", fiber: 1, purpose: "reserved" });
    const other = fiberUseOf({ id: "other", fiber: 1, purpose: "reserved", cableId: "cable-2" });
    const plant = openPlant(withRows(withLateral(), "fiberUse", [rival, other]));
    expect(rivalUses(plant, plant.rowOf("fiberUse", "use-1")).map((one) => one.id)).toEqual(["rival"]);
  });

  it("of a lateral finds the parent's use at the closure it comes from", () => {
    const plant = openPlant(withLateral());
    expect(parentUse(plant, { cableId: "cable-2", fiber: 1 })?.id).toBe("lateral-25");
    expect(parentUse(plant, { cableId: "cable-1", fiber: 1 })).toBeUndefined();
  });
});

describe("free fibers", () => {
  it("are those nothing uses, lowest first", () => {
    expect(freeFibers(openPlant(smallRoute()), "cable-1").slice(0, 2)).toEqual([3, 4]);
    expect(freeFibers(openPlant(smallRoute()), "cable-1")).toHaveLength(46);
  });

  it("of a lateral are those its parent is spliced to", () => {
    expect(freeFibers(openPlant(withLateral()), "cable-2")).toEqual([1]);
    expect(freeFibers(openPlant(withLateralTerminal()), "cable-2")).toEqual([]);
  });
});

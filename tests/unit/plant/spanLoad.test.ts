import { describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { spanBundle, spanPointLoads } from "../../../core/plant/spanLoad.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { withLateral } from "../../fixtures/route/faultyRoutes.ts";

describe("what hangs in a span", () => {
  it("is strand, cable and lashing, as thick as both together", () => {
    const bundle = spanBundle(openPlant(smallRoute()), "span-1");
    expect(bundle?.weightNPerM).toBeCloseTo(1.766 + 0.905 + 0.0876, 9);
    expect(bundle?.diameterM).toBeCloseTo(0.00635 + 0.0109, 9);
    expect(bundle?.underStrandM).toBeCloseTo(0.003175 + 0.0109, 9);
  });

  it("takes in every cable lashed there, and lashing once", () => {
    const run = { id: "run-second", cableId: "cable-2", spanId: "span-1", sequence: 2, reversed: false };
    const bundle = spanBundle(openPlant(withRows(withLateral(), "cableRun", [run])), "span-1");
    expect(bundle?.weightNPerM).toBeCloseTo(1.766 + 2 * 0.905 + 0.0876, 9);
  });

  it("is bare strand where no cable is lashed yet", () => {
    const bundle = spanBundle(openPlant(without(smallRoute(), "cableRun", "run-1")), "span-1");
    expect(bundle).toEqual({ diameterM: 0.00635, weightNPerM: 1.766, underStrandM: 0.003175 });
  });

  it("is nothing where there is no strand", () => {
    expect(
      spanBundle(openPlant(changed(smallRoute(), "span", "span-1", { strandSectionId: null })), "span-1"),
    ).toBeNull();
  });
});

describe("what hangs at single places of a span", () => {
  it("is the terminal by its model and the coil by the cable stored in it", () => {
    const loads = spanPointLoads(openPlant(smallRoute()), "span-2");
    expect(loads.map(({ atM }) => atM)).toEqual([0.9144, 0.9144]);
    expect(loads.map(({ weightN }) => weightN).sort((a, b) => b - a)).toEqual([24, 6.096 * 0.905]);
    expect(spanPointLoads(openPlant(smallRoute()), "span-1")).toEqual([]);
  });

  it("leaves out what is recorded past the far pole", () => {
    const route = changed(smallRoute(), "terminal", "terminal-1", { offsetM: 45.1 });
    expect(spanPointLoads(openPlant(route), "span-2")).toHaveLength(1);
  });
});

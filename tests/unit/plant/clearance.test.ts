import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { bindingCases, clearanceLimitFor, crossingClearance, groundClearance } from "../../../core/plant/clearance.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";

function known(route: Route) {
  const clearance = crossingClearance(openPlant(route), "crossing-1");
  if (clearance.kind === "unknown") throw new Error(clearance.why);
  return clearance;
}

/** Half the strand and the whole cable hang under the strand's centre line. */
const underStrandM = 0.003175 + 0.0109;

describe("the clearance over a crossing", () => {
  it("is the strand's height at midspan less sag and cable, on level ground", () => {
    const { byCase, worstCase, leastM, atByCaseM } = known(smallRoute());
    expect(byCase.stringing).toBeCloseTo(6.3 - 0.45 - underStrandM, 9);
    expect(worstCase).toBe("iced");
    expect(leastM).toBe(Math.min(byCase.stringing, byCase.hot, byCase.iced));
    expect(atByCaseM.stringing).toBeCloseTo(22.5, 9);
    // the terminal and its coil near the first pole draw the low point towards them
    expect(atByCaseM.iced).toBeLessThan(22.5);
    expect(atByCaseM.iced).toBeGreaterThan(22.4);
  });

  it("is taken over the whole width, at the edge nearest midspan", () => {
    const route = changed(smallRoute(), "crossing", "crossing-1", { offsetM: 8, widthM: 8 });
    expect(known(route).atOffsetM).toBe(12);
    expect(known(route).byCase.stringing).toBeCloseTo(6.3 - 4 * 0.45 * (12 / 45) * (33 / 45) - underStrandM, 9);
  });

  it("is taken inside the span where the crossing reaches past a pole", () => {
    const route = changed(smallRoute(), "crossing", "crossing-1", { offsetM: 0, widthM: 4, surfaceM: 100 });
    expect(known(route).atOffsetM).toBe(2);
  });

  it("follows the strand down to the lower pole of a slope", () => {
    const route = changed(smallRoute(), "pole", "pole-3", { groundM: 96 });
    const { atOffsetM, leastM } = known(changed(route, "crossing", "crossing-1", { widthM: 60 }));
    expect(atOffsetM).toBe(45);
    expect(leastM).toBeCloseTo(2.3 - underStrandM, 9);
  });

  it("takes the ground line for a surface nobody measured, and says so", () => {
    const clearance = known(changed(smallRoute(), "crossing", "crossing-1", { surfaceM: null }));
    expect(clearance.surfaceAssumed).toBe(true);
    expect(clearance.byCase.stringing).toBeCloseTo(6.3 - 0.45 - underStrandM, 9);
  });

  it("follows the measured ground under a crossing nobody levelled", () => {
    const humped = withRows(changed(smallRoute(), "crossing", "crossing-1", { surfaceM: null }), "groundPoint", [
      { id: "ground-1", spanId: "span-2", offsetM: 20, groundM: 101 },
    ]);
    const clearance = known(humped);
    expect(clearance.surfaceAssumed).toBe(false);
    expect(clearance.atByCaseM.stringing).toBeCloseTo(20, 9);
    expect(clearance.byCase.stringing).toBeCloseTo(5.3 - 4 * 0.45 * (20 / 45) * (25 / 45) - underStrandM, 9);
  });

  it("says where the strand's height was assumed", () => {
    expect(known(without(smallRoute(), "attachment", "strand-2")).strandAssumed).toBe(true);
    expect(known(smallRoute()).strandAssumed).toBe(false);
  });

  it("is unknown without ground at a pole, also over a surface that was measured", () => {
    const route = changed(changed(smallRoute(), "pole", "pole-2", { groundM: null }), "pole", "pole-3", {
      groundM: null,
    });
    expect(crossingClearance(openPlant(route), "crossing-1")).toEqual({
      kind: "unknown",
      why: "Nobody measured the ground at pole P2 and P3.",
    });
  });

  it("is unknown without strand", () => {
    const route = changed(smallRoute(), "span", "span-2", { strandSectionId: null });
    expect(crossingClearance(openPlant(route), "crossing-1").kind).toBe("unknown");
  });
});

describe("the limit over a surface", () => {
  it("is the strictest row of the chosen set", () => {
    const row = { ...limitRow(smallRoute()), id: "limit-owner", limitM: 5.5 };
    expect(clearanceLimitFor(openPlant(withRows(smallRoute(), "clearanceLimit", [row])), "road")?.id).toBe(
      "limit-owner",
    );
  });

  it("is none where the chosen set has no row for it", () => {
    expect(clearanceLimitFor(openPlant(without(smallRoute(), "clearanceLimit", "limit-road")), "road")).toBeUndefined();
  });
});

function limitRow(route: Route) {
  const row = route.clearanceLimit.get("limit-road");
  if (!row) throw new Error("the small route has lost its road limit");
  return row;
}

describe("the clearance over the ground between crossings", () => {
  const ground = (route: Route) => groundClearance(openPlant(route), "span-2");

  it("leaves out what a crossing covers", () => {
    const hump = { id: "ground-1", spanId: "span-2", offsetM: 22.5, groundM: 102 };
    const open = ground(withRows(smallRoute(), "groundPoint", [hump]));
    // the hump lies under the 7 m of the road: the worst open ground is at the road's edge
    expect(open?.kind === "known" && open.atByCaseM.stringing).toBeCloseTo(19, 9);
  });

  it("is nothing where crossings cover the whole span", () => {
    expect(ground(changed(smallRoute(), "crossing", "crossing-1", { widthM: 45 }))).toBeNull();
  });
});

describe("the cases that bind", () => {
  it("holds each case against its own limit, the one with the least to spare first", () => {
    const route = withRows(
      changed(smallRoute(), "clearanceLimit", "limit-road", { condition: "stringing" }),
      "clearanceLimit",
      [{ ...limitRow(smallRoute()), id: "limit-road-iced", condition: "iced", limitM: 2 }],
    );
    const plant = openPlant(route);
    const cases = bindingCases(plant, "road", {
      byCase: { stringing: 4.7, hot: 4, iced: 3 },
      easedByCaseM: { stringing: 0, hot: 0, iced: 0 },
    });
    expect(cases.map(({ condition, limit }) => [condition, limit.limitM])).toEqual([
      ["stringing", 4.7244],
      ["iced", 2],
    ]);
  });
});

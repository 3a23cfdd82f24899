import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import type { LoadFactor } from "../../../core/model/tables.ts";
import { governingOfGuy } from "../../../core/plant/guyStrength.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { guyTensionN } from "../../../core/plant/poleGuys.ts";
import { lineOnPole, polePull } from "../../../core/plant/poleLoad.ts";
import { stateIn } from "../../../core/plant/strength.ts";
import { windyLoad } from "../../../core/plant/windyLoad.ts";
import { changed, smallRoute, withRows } from "../../fixtures/route/buildRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";

const factors = { vertical: 1.9, wind: 1.75, windAtCrossing: 2.2, tension: 1.3, deadEnd: 1.4 } as const;

/** The small route whose strength set has load factors under the district's load. */
function factored(route: Route): Route {
  const rows = Object.entries(factors).map(
    ([load, factor]): LoadFactor => ({
      id: `factor-${load}`,
      strengthSetId: "strength-test",
      load: load as LoadFactor["load"], // the keys of factors
      condition: "loaded",
      factor,
      basisDocument: "test",
      basisClause: "",
      basisEdition: "",
      basisMark: "practice",
    }),
  );
  return withRows(route, "loadFactor", rows);
}

/** Pole 3 moved off the line, so that the strand turns there. */
const turning = changed(factored(extremeRoute()), "pole", "pole-3", { northM: 20 });

describe("the pull of our strand on a pole", () => {
  it("is that of the strand alone at a dead end, with the factor of a dead end: wind presses along no span", () => {
    const plant = openPlant(factored(smallRoute()));
    const pull = polePull(plant, "pole-1", "loaded");
    const endN = stateIn(plant, "span-1", "loaded")?.horizontalN ?? Number.NaN;
    expect(pull).toMatchObject({ tensionN: expect.closeTo(endN, 6), windN: expect.closeTo(0, 6) });
    expect(pull?.factored.eastN).toBeCloseTo(1.4 * endN, 6);
    expect(guyTensionN(plant, "guy-1", "loaded")).toBeCloseTo(
      1.4 * (guyTensionN(openPlant(smallRoute()), "guy-1", "loaded") ?? Number.NaN),
      6,
    );
  });

  it("has the wind on half of each span in it where the strand turns, with factors of its own", () => {
    const plant = openPlant(turning);
    const pull = polePull(plant, "pole-3", "loaded");
    if (!pull) throw new Error("the tensions at pole 3 are known");
    const windNPerM = windyLoad(plant, "span-3", "loaded")?.windNPerM ?? Number.NaN;
    expect(pull.windN).toBeGreaterThan(0.5 * windNPerM * 45);
    expect(pull.windN).toBeLessThan(windNPerM * 45);
    expect(pull.tension.factor).toBe(1.3);
    expect(Math.hypot(pull.factored.eastN, pull.factored.northN)).toBeCloseTo(
      1.3 * pull.tensionN + 2.2 * pull.windN,
      6,
    );
  });

  it("counts the wind of crossings beside a road alone, and none where the set has no such factor", () => {
    expect(polePull(openPlant(turning), "pole-4", "loaded")?.wind.factor).toBe(1.75);
    const away = changed(turning, "crossing", "crossing-1", { surface: "field" });
    expect(polePull(openPlant(away), "pole-3", "loaded")?.wind.factor).toBe(1.75);
  });

  it("is counted as it is in a case for which the set has no factors", () => {
    const pull = polePull(openPlant(turning), "pole-3", "extremeWind");
    expect(pull).toMatchObject({ tension: { factor: 1, row: null }, wind: { factor: 1, row: null } });
  });
});

describe("the governing case of a guy", () => {
  it("is the one in which it uses most of what it may be pulled with", () => {
    expect(governingOfGuy(openPlant(factored(extremeRoute())), "guy-1").condition).toBe("loaded");
    const weak = changed(extremeRoute(), "strengthLimit", "strength-guy-extremeWind", { limitFrac: 0.1 });
    const governing = governingOfGuy(openPlant(weak), "guy-1");
    expect(governing).toMatchObject({ condition: "extremeWind", weakest: { mostN: 2958 } });
  });
});

describe("our line on a pole", () => {
  it("bears down with its weight and ice and what hangs near, and is blown across, each with its factor", () => {
    const plant = openPlant(factored(smallRoute()));
    const { verticalNPerM = Number.NaN, windNPerM = Number.NaN } = windyLoad(plant, "span-2", "loaded") ?? {};
    const line = lineOnPole(plant, "pole-2", "loaded");
    const evenN = verticalNPerM * 45;
    expect(line?.acrossN).toBeCloseTo(2.2 * windNPerM * 45, 6);
    expect(line?.downN).toBeGreaterThan(1.9 * evenN);
    // one terminal and its coil hang a yard from the pole
    expect(line?.downN).toBeLessThan(1.9 * (evenN + 50));
  });

  it("bears down on the poles of a span with all it carries, whatever the slope", () => {
    const sloping = changed(smallRoute(), "pole", "pole-4", { groundM: 106 });
    const onLast = (route: Route) => {
      const plant = openPlant(route);
      const state = stateIn(plant, "span-3", "loaded");
      const hungN = state?.pointLoads.reduce((sum, one) => sum + one.weightN, 0) ?? Number.NaN;
      return {
        downN: lineOnPole(plant, "pole-4", "loaded")?.downN ?? 0,
        allN: (state?.verticalNPerM ?? 0) * 45 + hungN,
      };
    };
    expect(onLast(smallRoute()).downN).toBeLessThan(onLast(smallRoute()).allN);
    expect(onLast(sloping).downN).toBeGreaterThan(onLast(smallRoute()).downN);
  });

  it("is nothing at a pole without strand of ours", () => {
    const bare = ["span-1", "span-2"].reduce(
      (route, id) => changed(route, "span", id, { strandSectionId: null }),
      smallRoute(),
    );
    expect(lineOnPole(openPlant(bare), "pole-2", "loaded")).toBeNull();
  });
});

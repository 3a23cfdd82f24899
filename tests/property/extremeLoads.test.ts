import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blowOutM } from "../../core/plant/blowOut.ts";
import { openPlant, type Plant } from "../../core/plant/plant.ts";
import { polePull } from "../../core/plant/poleLoad.ts";
import { governingCase, stateIn } from "../../core/plant/strength.ts";
import { changed } from "../fixtures/route/buildRoute.ts";
import { extremeRoute } from "../fixtures/route/extremeRoute.ts";

/** A span of the route made anew: how long, how it is held, how high, and what weather and worker it bears. */
const spans = fc.record({
  lengthM: fc.double({ min: 15, max: 90, noNaN: true }),
  riseM: fc.double({ min: -6, max: 6, noNaN: true }),
  heightM: fc.double({ min: 4, max: 14, noNaN: true }),
  gustMPerS: fc.double({ min: 10, max: 70, noNaN: true }),
  workerLoadN: fc.double({ min: 50, max: 1200, noNaN: true }),
  slips: fc.boolean(),
});

type Wish = typeof spans extends fc.Arbitrary<infer T> ? T : never;

function plantOf({ lengthM, riseM, heightM, gustMPerS, workerLoadN, slips }: Wish): Plant {
  let route = extremeRoute({ workerLoadN });
  route = changed(route, "span", "span-3", { lengthM });
  route = changed(route, "pole", "pole-4", { groundM: 100 + riseM });
  route = changed(route, "attachment", "strand-3", { heightM });
  route = changed(route, "extremeWind", "wind-40", { gustMPerS });
  return openPlant(changed(route, "strandSection", "section-1", { atPoles: slips ? "slipping" : "clamped" }));
}

const pulledN = (plant: Plant, part: "extremeWind" | "worker" | "stringing" | "hot") =>
  stateIn(plant, "span-3", part)?.supportN ?? Number.NaN;

describe("a strand beyond the district's load", () => {
  it("is pulled harder and swung farther by every stronger gust", () => {
    fc.assert(
      fc.property(spans, fc.double({ min: 1.01, max: 1.5, noNaN: true }), (wish, times) => {
        const [calm, strong] = [plantOf(wish), plantOf({ ...wish, gustMPerS: wish.gustMPerS * times })];
        expect(pulledN(strong, "extremeWind")).toBeGreaterThan(pulledN(calm, "extremeWind"));
        const swungM = (plant: Plant) => blowOutM(plant, "span-3", wish.lengthM / 2, "extremeWind") ?? Number.NaN;
        expect(swungM(strong)).toBeGreaterThan(swungM(calm));
      }),
    );
  });

  it("is pulled harder by every heavier worker, and harder with one than without", () => {
    fc.assert(
      fc.property(spans, fc.double({ min: 1.01, max: 2, noNaN: true }), (wish, times) => {
        const [light, heavy] = [plantOf(wish), plantOf({ ...wish, workerLoadN: wish.workerLoadN * times })];
        expect(pulledN(heavy, "worker")).toBeGreaterThan(pulledN(light, "worker"));
        expect(pulledN(light, "worker")).toBeGreaterThan(pulledN(light, "hot"));
      }),
    );
  });

  it("uses in no case more of what is allowed than in the governing one", () => {
    fc.assert(
      fc.property(spans, (wish) => {
        const plant = plantOf(wish);
        const governing = governingCase(plant, "span-3");
        const usedFrac = governing ? governing.tensionN / governing.allowedN : Number.NaN;
        expect(pulledN(plant, "extremeWind") / (0.8 * 29580)).toBeLessThanOrEqual(usedFrac);
        expect(pulledN(plant, "worker") / (0.6 * 29580)).toBeLessThanOrEqual(usedFrac);
        expect(pulledN(plant, "stringing") / (0.25 * 29580)).toBeLessThanOrEqual(usedFrac);
      }),
    );
  });

  it("pulls a pole with no more than all its strand and all the wind on it together", () => {
    fc.assert(
      fc.property(spans, (wish) => {
        const plant = plantOf(wish);
        const pull = polePull(plant, "pole-3", "extremeWind");
        if (!pull) throw new Error("every tension at pole 3 is known");
        const spanIds = ["span-2", "span-3"];
        const allN = spanIds.reduce((sum, id) => sum + (stateIn(plant, id, "extremeWind")?.horizontalN ?? 0), 0);
        expect(pull.tensionN).toBeLessThanOrEqual(allN * (1 + 1e-12));
        expect(Math.hypot(pull.factored.eastN, pull.factored.northN)).toBeCloseTo(pull.tensionN + pull.windN, 6);
      }),
    );
  });
});

import { expect, it } from "vitest";
import { blowOutM } from "../../../core/plant/blowOut.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { extremeRoute } from "../../fixtures/route/extremeRoute.ts";

it("the strand swings out most at midspan, as far as the parabola of the wind alone", () => {
  const plant = openPlant(smallRoute());
  const middleM = blowOutM(plant, "span-1", 22.5, "loaded") ?? 0;
  expect(middleM).toBeGreaterThan(0.1);
  expect(blowOutM(plant, "span-1", 11.25, "loaded")).toBeCloseTo(0.75 * middleM, 12);
  expect(blowOutM(plant, "span-1", 0, "loaded")).toBe(0);
});

it("extreme wind swings it farther than the district, and none where the route is not checked under it", () => {
  const plant = openPlant(extremeRoute());
  const swungM = blowOutM(plant, "span-1", 22.5, "extremeWind") ?? 0;
  expect(swungM).toBeGreaterThan(blowOutM(plant, "span-1", 22.5, "loaded") ?? Number.NaN);
  expect(blowOutM(openPlant(smallRoute()), "span-1", 22.5, "extremeWind")).toBeNull();
});

it("without wind it does not swing, and without strand nobody can tell", () => {
  const calm = changed(smallRoute(), "loadingDistrict", "district-heavy", { windPa: 0 });
  expect(blowOutM(openPlant(calm), "span-1", 22.5, "loaded")).toBe(0);
  const bare = changed(smallRoute(), "span", "span-1", { strandSectionId: null });
  expect(blowOutM(openPlant(bare), "span-1", 22.5, "loaded")).toBeNull();
});

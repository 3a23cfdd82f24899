import { expect, test } from "vitest";
import { hungSlackM } from "../../../core/plant/hungSlack.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

/** 45 m strung at a sag of 1 %. */
const spanM = (8 / 3) * 0.01 ** 2 * 45;

test("a cable is longer than its spans by what they hang, span after span", () => {
  const plant = openPlant(smallRoute());
  expect(hungSlackM(plant, "cable-1", "span-1", 0)).toBe(0);
  expect(hungSlackM(plant, "cable-1", "span-1", 45)).toBeCloseTo(spanM, 12);
  expect(hungSlackM(plant, "cable-1", "span-2", 22.5)).toBeCloseTo(1.5 * spanM, 12);
});

test("off the cable and without strand nothing hangs", () => {
  const plant = openPlant(changed(smallRoute(), "span", "span-1", { strandSectionId: null }));
  expect(hungSlackM(plant, "cable-1", "span-1", 45)).toBe(0);
  expect(hungSlackM(plant, "cable-1", "gone", 10)).toBe(0);
});

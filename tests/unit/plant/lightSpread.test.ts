import { expect, it } from "vitest";
import { isSpreadTooWide, lightSpread } from "../../../core/plant/lightSpread.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { tapChain } from "../../fixtures/route/faultyRoutes.ts";

it("the drop beyond a tap is the far one, the one before it the near one", () => {
  const spread = lightSpread(openPlant(tapChain({})), "feed-1");
  expect(spread).toMatchObject({ farDropId: "drop-3", way: "up" });
  expect(spread?.lossDb).toBeGreaterThan(1.5);
});

it("a hub output with one drop, or none, has no spread", () => {
  const plant = openPlant(smallRoute());
  expect(lightSpread(plant, "feed-2")).toBeNull();
  expect(isSpreadTooWide(plant, "feed-2")).toBe(false);
});

it("is too wide over what the class allows, and not at it", () => {
  const route = tapChain({});
  const lossDb = lightSpread(openPlant(route), "feed-1")?.lossDb ?? 0;
  const allowed = (differentialDb: number) =>
    isSpreadTooWide(openPlant(changed(route, "opticalClass", "class-b-plus", { differentialDb })), "feed-1");
  expect([allowed(lossDb), allowed(lossDb - 0.001)]).toEqual([false, true]);
});

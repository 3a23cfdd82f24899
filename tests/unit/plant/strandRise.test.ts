import { expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { strandRise } from "../../../core/plant/strandRise.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

const hill = changed(smallRoute(), "pole", "pole-2", { groundM: 103 });

it("a span rises as the ground does from its first pole to its far one", () => {
  expect(strandRise(openPlant(hill), "span-1")).toEqual({ riseM: 3, isMeasured: true });
  expect(strandRise(openPlant(hill), "span-2")).toEqual({ riseM: -3, isMeasured: true });
});

it("a span beside a pole whose ground nobody measured is taken as level, and says so", () => {
  const route = changed(hill, "pole", "pole-2", { groundM: null });
  expect(strandRise(openPlant(route), "span-1")).toEqual({ riseM: 0, isMeasured: false });
});

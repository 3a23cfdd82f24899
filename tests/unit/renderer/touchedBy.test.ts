import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { touchedBy } from "../../../renderer/panels/fields/touchedBy.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

test("a span touches its poles, its strand, and what hangs in it and lies under it", () => {
  expect([...touchedBy(openPlant(smallRoute()), "span", "span-2")].sort()).toEqual([
    "crossing/crossing-1",
    "pole/pole-2",
    "pole/pole-3",
    "slack/coil-1",
    "strandSection/section-1",
    "terminal/terminal-1",
  ]);
});

test("a row that is gone touches nothing", () => {
  expect(touchedBy(openPlant(smallRoute()), "span", "gone")).toEqual([]);
});

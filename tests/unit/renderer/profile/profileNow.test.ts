import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { profileWays, wayPassing } from "../../../../renderer/profile/profileNow.ts";
import { smallRoute, without } from "../../../fixtures/route/buildRoute.ts";

const half = without(smallRoute(), "cableRun", "run-3");

test("strand without a cable can be shown from the side after the cables, and only where there is some", () => {
  const waysOf = (route: typeof half) => profileWays({ route, plant: openPlant(route) }).map(({ ref }) => ref);
  expect(waysOf(smallRoute())).toEqual(["cable/cable-1"]);
  expect(waysOf(half)).toEqual(["cable/cable-1", "strandSection/section-1"]);
});

test("a span without a cable is looked for along its strand, a span with one along its cable", () => {
  const plant = openPlant(half);
  const strand = { table: "strandSection", id: "section-1" } as const;
  const cable = { table: "cable", id: "cable-1" } as const;
  expect(wayPassing(plant, "span/span-3", cable)).toEqual(strand);
  expect(wayPassing(plant, "span/span-1", strand)).toEqual(cable);
  expect(wayPassing(plant, "pole/pole-3", strand)).toEqual(strand);
});

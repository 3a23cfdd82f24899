import { expect, test } from "vitest";
import { smallestCableFor } from "../../../core/layout/cableFit.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const plant = openPlant(smallRoute());

test("ten fibers and the two spares of a tube fit a cable of twelve", () => {
  expect(smallestCableFor(plant, [4, 6])?.fiberCount).toBe(12);
});

test("an eleventh fiber needs the next larger cable", () => {
  expect(smallestCableFor(plant, [4, 6, 1])?.fiberCount).toBe(48);
});

test("fibers in use count, and a cable without the highest of them does not fit", () => {
  expect(smallestCableFor(plant, [1], new Set([13]))?.fiberCount).toBe(48);
});

test("more than the catalogue's largest cable has is said to fit none", () => {
  expect(smallestCableFor(plant, [121])).toBeNull();
});

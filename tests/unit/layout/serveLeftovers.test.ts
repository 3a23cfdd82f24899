import { expect, test } from "vitest";
import { serveLeftovers } from "../../../core/layout/serveLeftovers.ts";

const one = [0, 10];
const two = [0, 10, 12];

function reaching(openCosts: readonly number[], ...units: number[]) {
  return { arcs: units.map((unit) => ({ unit, cost: 1 })), openCosts };
}

test("a leftover takes the place with room that costs least more", () => {
  const facilities = [reaching(one, 0, 1), reaching(two, 0, 1)];
  expect(serveLeftovers([1, -1], facilities)).toEqual([1, 1]);
});

test("a neighbour moves along where that makes room", () => {
  const facilities = [reaching(one, 0, 1), reaching(one, 1, 2), reaching(one, 2)];
  expect(serveLeftovers([-1, 0, 1], facilities)).toEqual([0, 1, 2]);
});

test("a unit nobody reaches stays out", () => {
  expect(serveLeftovers([-1, -1], [reaching(one, 1)])).toEqual([-1, 0]);
});

test("where all are full the rest stay out and nobody loses a port", () => {
  expect(serveLeftovers([0, -1, -1], [reaching(one, 0, 1, 2)])).toEqual([0, -1, -1]);
});

import { expect, test } from "vitest";
import { openField } from "../../../core/placement/field.ts";
import { seatLeftOut } from "../../../core/placement/seatLeftOut.ts";
import { problemOf } from "../../fixtures/placement/problemOf.ts";

/** Points by what they hold; units by the points they reach, and by their ports where that is not one. */
function seated(
  capacities: readonly number[],
  reach: readonly (readonly number[])[],
  start: readonly number[],
  demands: readonly number[] = [],
): number[] {
  const field = openField(
    problemOf(
      capacities.map((capacity) => ({ modules: [{ capacity, cost: 10 }] })),
      reach.map((points, unit) => ({
        demand: demands[unit] ?? 1,
        arcs: points.map((point) => ({ point, cost: 1 + point })),
      })),
    ),
  );
  const pointOf = Int32Array.from(start);
  seatLeftOut(field, pointOf);
  return [...pointOf];
}

test("a unit left out takes the place with room that costs least more", () => {
  expect(
    seated(
      [1, 2],
      [
        [0, 1],
        [0, 1],
      ],
      [1, -1],
    ),
  ).toEqual([1, 1]);
});

test("a neighbour moves along where that makes room", () => {
  expect(seated([1, 1, 1], [[0], [0, 1], [1, 2]], [-1, 0, 1])).toEqual([0, 1, 2]);
});

test("a unit of two ports is not put where moving one of one port makes too little room", () => {
  expect(seated([2, 1], [[0], [0], [0, 1]], [-1, 0, 0], [2, 1, 1])).toEqual([-1, 0, 0]);
});

test("where all are full the rest stay out and nobody loses a port", () => {
  expect(seated([1], [[0], [0], [0]], [0, -1, -1])).toEqual([0, -1, -1]);
});

import { expect, it } from "vitest";
import { contiguousProgram } from "../../../core/placement/contiguous.ts";
import { costOf, openField } from "../../../core/placement/field.ts";
import { problemOf } from "../../fixtures/placement/problemOf.ts";

/** Terminals of 1, 2 or 4 ports on each point; a row of costs a unit, null beyond reach. */
function layout(costs: readonly (readonly (number | null)[])[], demands: readonly number[] = []) {
  const modules = [
    { capacity: 1, cost: 10 },
    { capacity: 2, cost: 14 },
    { capacity: 4, cost: 20 },
  ];
  const field = openField(
    problemOf(
      (costs[0] ?? []).map(() => ({ modules })),
      costs.map((row, unit) => ({
        demand: demands[unit] ?? 1,
        arcs: row.flatMap((cost, point) => (cost === null ? [] : [{ point, cost }])),
      })),
    ),
  );
  const pointOf = contiguousProgram(
    field,
    Int32Array.from(costs, (_, unit) => unit),
  );
  return { pointOf: [...pointOf], cost: costOf(field, pointOf) };
}

it("one terminal that holds all is cheaper than two that are nearer", () => {
  expect(
    layout([
      [1, 3],
      [1, 3],
      [3, 1],
      [3, 1],
    ]),
  ).toEqual({ pointOf: [0, 0, 0, 0], cost: 28 });
});

it("long drops are worth a second terminal", () => {
  expect(
    layout([
      [1, 9],
      [1, 9],
      [9, 1],
      [9, 1],
    ]),
  ).toEqual({ pointOf: [0, 0, 1, 1], cost: 32 });
});

it("a unit beyond reach of every point is left out and the others are served", () => {
  expect(
    layout([
      [1, null],
      [null, null],
      [null, 1],
    ]).pointOf,
  ).toEqual([0, -1, 1]);
});

it("a unit is served however dear its drop", () => {
  expect(
    layout([
      [1, 900],
      [1, 900],
      [1, 900],
      [1, 900],
      [900, 900],
    ]).pointOf,
  ).not.toContain(-1);
});

it("a unit of three ports fills what three units would", () => {
  expect(
    layout(
      [
        [1, 5],
        [1, 5],
        [5, 6],
      ],
      [1, 3, 3],
    ).pointOf,
  ).toEqual([0, 0, 1]);
});

it("a street without units needs no terminal", () => {
  expect(layout([])).toEqual({ pointOf: [], cost: 0 });
});

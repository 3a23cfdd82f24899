import { expect, test } from "vitest";
import { planParts } from "../../../../core/placement/parts/planParts.ts";
import { madeStreet, streetKinds } from "../../../fixtures/placement/madeStreet.ts";
import { problemOf } from "../../../fixtures/placement/problemOf.ts";

/** Poles in a row, and units by the poles they reach. */
function row(poleCount: number, reach: readonly (readonly number[])[]) {
  return problemOf(
    Array.from({ length: poleCount }, () => ({ modules: [{ capacity: 4, cost: 10 }] })),
    reach.map((points) => ({ demand: 1, arcs: points.map((point) => ({ point, cost: 1 })) })),
  );
}

const street = madeStreet({ ...streetKinds.dense, unitCount: 600, seed: 4 });

test("every pole is in one part, and a unit in each part that reaches it", () => {
  const { points, units, partOf, partCount, sharedFrom } = planParts(street, 100);
  const all = points.flatMap((own) => [...own]);
  expect(all.toSorted((a, b) => a - b)).toEqual(street.points.map((_, point) => point));
  street.demand.forEach((_, unit) => {
    const arcs = street.arcPoint.slice(street.firstArc[unit], street.firstArc[unit + 1]);
    const reaching = new Set(Array.from(arcs, (point) => partOf[point] ?? -1));
    const listed = units.flatMap((own, part) => (own.includes(unit) ? [part] : []));
    expect(new Set(listed)).toEqual(reaching);
    expect(partCount[unit]).toBe(reaching.size);
    expect(sharedFrom[unit]).toBe(reaching.size > 1 ? Math.min(...reaching) : -1);
  });
});

test("parts hold from half as many units as asked to half as many again", () => {
  for (const { length } of planParts(street, 100).units.slice(1)) {
    expect(length).toBeGreaterThan(50);
    expect(length).toBeLessThan(170);
  }
});

test("the cut falls where one unit reaches over it, not a pole farther where two do", () => {
  const { points } = planParts(row(8, [[0], [0], [1], [1], [2], [2, 3], [3, 4], [3, 4], [4], [5], [6], [7]]), 7);
  expect(points.map((own) => [...own])).toEqual([
    [0, 1, 2],
    [3, 4, 5, 6, 7],
  ]);
});

test("a street of fewer units than a part may have is one part, and shares none", () => {
  const { points, sharedFrom } = planParts(street, 1_000);
  expect(points).toHaveLength(1);
  expect(sharedFrom.every((part) => part === -1)).toBe(true);
});

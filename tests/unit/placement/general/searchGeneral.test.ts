import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { searchGeneral } from "../../../../core/placement/general/searchGeneral.ts";
import type { Placement, Problem } from "../../../../core/placement/problem.ts";
import { problemOf, unitsOf } from "../../../fixtures/placement/problemOf.ts";

const patient = { elapsedS: () => 0, stopped: () => false };
const solve = (problem: Problem, seed = 1) => searchGeneral(problem, patient, { seed, gap: 0 });

/** Small problems of every kind: sparse arcs, one or two modules a point, units of no port, costs whole or not. */
const problems: fc.Arbitrary<Problem> = fc
  .record({
    points: fc.array(
      fc.record({
        capacities: fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { minLength: 0, maxLength: 2 }),
        cost: fc.integer({ min: 0, max: 40 }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    demand: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 6 }),
    costs: fc.array(fc.option(fc.integer({ min: 0, max: 60 }), { freq: 5 }), { minLength: 24, maxLength: 24 }),
    part: fc.constantFrom(1, 0.37),
    openExactly: fc.option(fc.integer({ min: 1, max: 4 })),
  })
  .map(({ points, demand, costs, part, openExactly }) => {
    const problem = problemOf(
      points.map(({ capacities, cost }) => ({
        modules: capacities
          .toSorted((a, b) => a - b)
          .map((capacity, size) => ({ capacity, cost: (cost + 7 * size) * part })),
      })),
      demand.map((ports, unit) => ({
        demand: ports,
        arcs: points.flatMap((_, point) => {
          const cost = costs[4 * unit + point] ?? null;
          return cost === null ? [] : [{ point, cost: cost * part }];
        }),
      })),
    );
    return openExactly === null ? problem : { ...problem, openExactly };
  });

/** Cost of a layout by the problem's own words; infinite where it is none. */
function costOf(problem: Problem, pointOf: readonly number[]): number {
  const load = new Map<number, number>();
  let cost = 0;
  unitsOf(problem).forEach(({ demand, arcs }, unit) => {
    const point = pointOf[unit] ?? -1;
    cost += arcs.find((arc) => arc.point === point)?.cost ?? Number.POSITIVE_INFINITY;
    load.set(point, (load.get(point) ?? 0) + demand);
  });
  const idle: number[] = [];
  problem.points.forEach(({ modules }, point) => {
    const ports = load.get(point);
    if (ports !== undefined) cost += modules.find((one) => one.capacity >= ports)?.cost ?? Number.POSITIVE_INFINITY;
    else if (modules[0]) idle.push(modules[0].cost);
  });
  if (problem.openExactly === undefined) return cost;
  const more = problem.openExactly - load.size;
  if (more < 0 || more > idle.length) return Number.POSITIVE_INFINITY;
  return (
    cost +
    idle
      .toSorted((a, b) => a - b)
      .slice(0, more)
      .reduce((sum, one) => sum + one, 0)
  );
}

function cheapestOfAll(problem: Problem): number {
  let best = Number.POSITIVE_INFINITY;
  const pointOf: number[] = [];
  const place = (unit: number): void => {
    if (unit === problem.demand.length) {
      best = Math.min(best, costOf(problem, pointOf));
      return;
    }
    problem.points.forEach((_, point) => {
      pointOf[unit] = point;
      place(unit + 1);
    });
  };
  place(0);
  return best;
}

const holds = (property: (problem: Problem) => void, numRuns: number) =>
  fc.assert(fc.property(problems, property), { numRuns, seed: 3 });

describe("the general search", () => {
  test("finds and proves the cheapest of all layouts, and none where there is none", () => {
    let none = 0;
    holds((problem) => {
      const best = cheapestOfAll(problem);
      const found = solve(problem);
      if (best === Number.POSITIVE_INFINITY) {
        none += 1;
        expect(found).toBeNull();
        return;
      }
      expect(found?.cost).toBeCloseTo(best, 6);
      expect(costOf(problem, Array.from(found?.pointOf ?? []))).toBeCloseTo(best, 6);
      expect(found?.bound).toBe(found?.cost);
    }, 400);
    expect(none).toBeGreaterThan(20);
    expect(none).toBeLessThan(300);
  });

  test("stopped at any time, keeps its bound below the cheapest and its cost above it", () => {
    holds((problem) => {
      const best = cheapestOfAll(problem);
      for (const most of [1, 5, 25]) {
        let asked = 0;
        const told: Placement[] = [];
        const found = searchGeneral(
          problem,
          { elapsedS: () => 0, stopped: () => ++asked > most, better: (one) => told.push(one) },
          { seed: 1, gap: 0 },
        );
        for (const { cost, bound } of found ? [...told, found] : told) {
          expect(bound).toBeLessThanOrEqual(best + 1e-6);
          expect(cost).toBeGreaterThanOrEqual(best - 1e-6);
        }
      }
    }, 150);
  });

  test("gives the same layout on every run of a seed", () => {
    holds((problem) => {
      expect(solve(problem, 7)).toEqual(solve(problem, 7));
    }, 50);
  });

  test("names no layout where the units ask more than all points hold", () => {
    const tooMany = problemOf(
      [{ modules: [{ capacity: 2, cost: 1 }] }],
      [1, 1, 1].map((demand) => ({ demand, arcs: [{ point: 0, cost: 1 }] })),
    );
    expect(solve(tooMany)).toBeNull();
  });
});

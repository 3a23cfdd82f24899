import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { contiguousProgram } from "../../core/placement/contiguous.ts";
import { costOf, openField } from "../../core/placement/field.ts";
import type { Problem } from "../../core/placement/problem.ts";
import { type Solution, solvePlacement } from "../../core/placement/solvePlacement.ts";
import { unitOrderOf } from "../../core/placement/unitOrder.ts";
import { greedyNearestCost } from "../fixtures/placement/greedyNearest.ts";
import { drawer, madeStreet, type StreetWishes, streetKinds, terminals } from "../fixtures/placement/madeStreet.ts";
import { problemOf, unitsOf } from "../fixtures/placement/problemOf.ts";

const patient = { elapsedS: () => 0, stopped: () => false };
const solve = (problem: Problem): Solution => solvePlacement(problem, patient, { gap: 0, seed: 1 });

const street: fc.Arbitrary<StreetWishes> = fc
  .record({
    kind: fc.constantFrom(...Object.values(streetKinds)),
    unitCount: fc.integer({ min: 1, max: 60 }),
    seed: fc.integer({ min: 0, max: 1e6 }),
  })
  .map(({ kind, ...rest }) => ({ ...kind, ...rest }));

function holds(property: (wishes: StreetWishes) => void, numRuns: number): void {
  fc.assert(fc.property(street, property), { numRuns, seed: 5 });
}

describe("a placement on any street", () => {
  test("costs no less than its bound, no more than the contiguous layout and than nearest with room, and its cost is what it says", () => {
    let compared = 0;
    holds((wishes) => {
      const problem = madeStreet(wishes);
      const field = openField(problem);
      const { pointOf, cost, bound, unserved } = solve(problem);
      if (unserved.length > 0) return;
      compared += 1;
      expect(costOf(field, pointOf)).toBeCloseTo(cost, 6);
      expect(bound).toBeLessThanOrEqual(cost + 1e-6);
      expect(cost).toBeLessThanOrEqual(costOf(field, contiguousProgram(field, unitOrderOf(problem))) + 1e-6);
      expect(cost).toBeLessThanOrEqual(greedyNearestCost(field) + 1e-6);
    }, 200);
    expect(compared).toBeGreaterThan(190);
  });

  test("never gives a point more than its largest terminal holds, nor a unit a point it does not reach", () => {
    holds((wishes) => {
      const problem = madeStreet(wishes);
      const { pointOf } = solve(problem);
      const load = new Map<number, number>();
      unitsOf(problem).forEach(({ demand, arcs }, unit) => {
        const point = pointOf[unit] ?? -1;
        expect(arcs.map((arc) => arc.point)).toContain(point);
        load.set(point, (load.get(point) ?? 0) + demand);
      });
      expect(Math.max(...load.values())).toBeLessThanOrEqual(terminals.at(-1)?.capacity ?? 0);
    }, 60);
  });

  test("is proven the cheapest, and is the contiguous one where each unit asks one port and setbacks are equal", () => {
    holds((wishes) => {
      const problem = madeStreet({ ...wishes, setbackFt: [55, 55], largeFrac: 0 });
      const field = openField(problem);
      const { cost, status } = solve(problem);
      expect(status).toBe("optimal");
      expect(cost).toBeCloseTo(costOf(field, contiguousProgram(field, unitOrderOf(problem))), 6);
    }, 60);
  });

  test("costs the same seen in a mirror, with poles and units numbered anew, and as much more as all prices", () => {
    holds((wishes) => {
      const problem = madeStreet(wishes);
      const { cost } = solve(problem);
      const count = problem.points.length;
      const shuffled = shuffle(count, wishes.seed);
      expect(solve(renumbered(problem, (point) => count - 1 - point)).cost).toBeCloseTo(cost, 6);
      expect(solve(renumbered(problem, (point) => shuffled[point] ?? -1)).cost).toBeCloseTo(cost, 6);
      expect(solve(priced(problem, 2.5)).cost).toBeCloseTo(2.5 * cost, 6);
    }, 40);
  });

  test("is never dearer with one more pole, nor cheaper with a shorter reach", () => {
    holds((wishes) => {
      const problem = madeStreet(wishes);
      const { cost } = solve(problem);
      expect(solve(withPole(problem, wishes.seed)).cost).toBeLessThanOrEqual(cost + 1e-6);
      const shorter = solve(madeStreet({ ...wishes, reachFt: 0.8 * wishes.reachFt }));
      if (shorter.unserved.length === 0) expect(shorter.cost).toBeGreaterThanOrEqual(cost - 1e-6);
    }, 60);
  });

  test("costs the sum of two streets that lie far apart", () => {
    holds((wishes) => {
      const one = madeStreet(wishes);
      const other = madeStreet({ ...wishes, seed: wishes.seed + 1 });
      const shift = one.points.length;
      const both = problemOf(
        [...one.points, ...other.points],
        [
          ...unitsOf(one),
          ...unitsOf(other).map(({ demand, arcs }) => ({
            demand,
            arcs: arcs.map(({ point, cost }) => ({ point: point + shift, cost })),
          })),
        ],
      );
      expect(solve(both).cost).toBeCloseTo(solve(one).cost + solve(other).cost, 6);
    }, 40);
  });

  test("names every unit without a pole in reach", () => {
    holds((wishes) => {
      const problem = madeStreet({ ...wishes, reachFt: 65 });
      const alone = unitsOf(problem).flatMap(({ arcs }, unit) => (arcs.length === 0 ? [unit] : []));
      const { unserved } = solve(problem);
      const named = unserved.filter((one) => one.reason === "no place is within reach").map((one) => one.unit);
      expect(named).toEqual(alone);
    }, 60);
  });
});

test("on any small graph the cost is the least of all assignments there are", () => {
  const graph = fc.record({
    costs: fc.array(fc.array(fc.option(fc.integer({ min: 1, max: 60 })), { minLength: 4, maxLength: 4 }), {
      minLength: 1,
      maxLength: 7,
    }),
    demands: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 7, maxLength: 7 }),
    capacities: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 4, maxLength: 4 }),
  });
  let served = 0;
  fc.assert(
    fc.property(graph, ({ costs, demands, capacities }) => {
      const problem = problemOf(
        capacities.map((capacity) => ({
          modules: [
            { capacity, cost: 30 },
            { capacity: 2 * capacity, cost: 45 },
          ],
        })),
        costs.map((row, unit) => ({
          demand: demands[unit] ?? 1,
          arcs: row.flatMap((cost, point) => (cost === null ? [] : [{ point, cost }])),
        })),
      );
      const { cost, status } = solve(problem);
      const least = leastCost(problem);
      if (least === Number.POSITIVE_INFINITY) expect(status).toBe("infeasible");
      else {
        served += 1;
        expect(status).toBe("optimal");
        expect(cost).toBeCloseTo(least, 6);
      }
    }),
    { numRuns: 300, seed: 8 },
  );
  expect(served).toBeGreaterThan(80);
});

/** Every assignment in turn. */
function leastCost(problem: Problem): number {
  const units = unitsOf(problem);
  const load = problem.points.map(() => 0);
  const from = (unit: number): number => {
    const next = units[unit];
    if (next === undefined) return load.reduce((sum, one, point) => sum + moduleCost(problem, point, one), 0);
    let least = Number.POSITIVE_INFINITY;
    for (const { point, cost } of next.arcs) {
      load[point] = (load[point] ?? 0) + next.demand;
      least = Math.min(least, cost + from(unit + 1));
      load[point] = (load[point] ?? 0) - next.demand;
    }
    return least;
  };
  return from(0);
}

function moduleCost(problem: Problem, point: number, load: number): number {
  if (load === 0) return 0;
  const fitting = problem.points[point]?.modules.filter((one) => one.capacity >= load) ?? [];
  return Math.min(...fitting.map((one) => one.cost));
}

function renumbered(problem: Problem, numberOf: (point: number) => number): Problem {
  const points = problem.points.map((one) => one);
  for (const [point, one] of problem.points.entries()) points[numberOf(point)] = one;
  const units = unitsOf(problem).map(({ demand, arcs }) => ({
    demand,
    arcs: arcs.map(({ point, cost }) => ({ point: numberOf(point), cost })),
  }));
  return problemOf(points, units.reverse());
}

function priced(problem: Problem, times: number): Problem {
  return {
    ...problem,
    points: problem.points.map(({ modules }) => ({
      modules: modules.map(({ capacity, cost }) => ({ capacity, cost: times * cost })),
    })),
    arcCost: problem.arcCost.map((cost) => times * cost),
  };
}

/** One more pole at the far end of the list, near some units. */
function withPole(problem: Problem, seed: number): Problem {
  const draw = drawer(seed);
  const first = Math.floor(draw() * problem.demand.length);
  const units = unitsOf(problem).map(({ demand, arcs }, unit) => ({
    demand,
    arcs:
      Math.abs(unit - first) > 8
        ? arcs
        : [...arcs, { point: problem.points.length, cost: demand * (90 + 60 * draw()) }],
  }));
  return problemOf([...problem.points, { modules: terminals }], units);
}

function shuffle(count: number, seed: number): number[] {
  const draw = drawer(seed);
  return Array.from({ length: count }, (_, point) => ({ point, rank: draw() }))
    .sort((a, b) => a.rank - b.rank)
    .map((one) => one.point);
}

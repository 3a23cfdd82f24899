import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { costOf, openField } from "../../core/placement/field.ts";
import { joinParts } from "../../core/placement/parts/joinParts.ts";
import { planParts } from "../../core/placement/parts/planParts.ts";
import { solvePart } from "../../core/placement/parts/solvePart.ts";
import type { Placement, Problem } from "../../core/placement/problem.ts";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";
import { problemOf, unitsOf } from "../fixtures/placement/problemOf.ts";
import { knownStreets } from "../fixtures/placement/readStreet.ts";
import { costByHighs } from "../standards/placementJudge.ts";

const patient = { elapsedS: () => 0, stopped: () => false };
const exact = { gap: 0, seed: 1 };

function inParts(problem: Problem, unitsPerPart: number): Placement & { readonly partCount: number } {
  const plan = planParts(problem, unitsPerPart);
  const answers = plan.points.map((_, part) => solvePart(problem, plan, part, patient, exact));
  return { ...joinParts(problem, plan, answers), partCount: plan.points.length };
}

/** Each unit on a point it reaches or on none, and no point holding more than its largest terminal. */
function expectFeasible(problem: Problem, pointOf: Int32Array): void {
  const load = problem.points.map(() => 0);
  unitsOf(problem).forEach(({ demand, arcs }, unit) => {
    const point = pointOf[unit] ?? -1;
    if (point === -1) return;
    expect(arcs.map((arc) => arc.point)).toContain(point);
    load[point] = (load[point] ?? 0) + demand;
  });
  problem.points.forEach(({ modules }, point) => {
    expect(load[point]).toBeLessThanOrEqual(modules.at(-1)?.capacity ?? 0);
  });
}

const leftOutCount = (pointOf: Int32Array): number => pointOf.filter((point) => point === -1).length;

describe("a street solved in parts", () => {
  const street = fc.record({
    kind: fc.constantFrom(...Object.values(streetKinds)),
    unitCount: fc.integer({ min: 60, max: 150 }),
    unitsPerPart: fc.integer({ min: 20, max: 50 }),
    seed: fc.integer({ min: 0, max: 1e6 }),
  });

  test("serves everybody, at no less than the least cost there is and no more than a hundredth above it; its bound is below", () => {
    let partCount = 0;
    fc.assert(
      fc.property(street, ({ kind, unitsPerPart, ...rest }) => {
        const problem = madeStreet({ ...kind, ...rest });
        const whole = solvePlacement(problem, patient, exact);
        if (whole.status !== "optimal") return;
        const parts = inParts(problem, unitsPerPart);
        partCount += parts.partCount;
        expectFeasible(problem, parts.pointOf);
        expect(leftOutCount(parts.pointOf)).toBe(0);
        expect(costOf(openField(problem), parts.pointOf)).toBeCloseTo(parts.cost, 6);
        expect(parts.bound).toBeLessThanOrEqual(whole.cost + 1e-6);
        expect(parts.bound).toBeGreaterThan(0.95 * whole.cost);
        expect(parts.cost).toBeGreaterThanOrEqual(whole.cost - 1e-6);
        expect(parts.cost).toBeLessThanOrEqual(1.01 * whole.cost);
      }),
      { numRuns: 40, seed: 5 },
    );
    expect(partCount).toBeGreaterThan(80);
  });

  test.each([
    ["crowded", streetKinds.crowded],
    ["mid", streetKinds.mid],
  ] as const)("HiGHS proves a cost between bound and cost of 24 units in parts, %s", async (_, kind) => {
    const problem = madeStreet({ ...kind, unitCount: 24, seed: 11 });
    const { cost, bound, partCount } = inParts(problem, 8);
    const least = (await costByHighs(problem)) ?? Number.NaN;
    expect(partCount).toBeGreaterThan(1);
    expect(bound).toBeLessThanOrEqual(least + 1e-3);
    expect(cost).toBeGreaterThanOrEqual(least - 1e-3);
  });

  test("leaves out those whom no pole reaches or holds, and only those; cost and bound are of the others", () => {
    const reached = madeStreet({ ...streetKinds.crowded, unitCount: 80, reachFt: 80, seed: 2 });
    const problem = problemOf(
      reached.points,
      unitsOf(reached).map((unit, number) => (number % 9 === 4 ? { ...unit, demand: 15 } : unit)),
    );
    const whole = solvePlacement(problem, patient, exact);
    const { cost, bound, pointOf } = inParts(problem, 20);
    const leftOut = Array.from(pointOf).flatMap((point, unit) => (point === -1 ? [unit] : []));
    expect(leftOut).toEqual(whole.unserved.map((one) => one.unit));
    expect(leftOut.length).toBeGreaterThan(8);
    expect(bound).toBeLessThanOrEqual(whole.cost + 1e-6);
    expect(cost).toBeGreaterThanOrEqual(whole.cost - 1e-6);
  });

  test("is cut between two streets that do not hang together, at no loss", () => {
    const one = madeStreet({ ...streetKinds.crowded, unitCount: 60, seed: 3 });
    const shift = one.points.length;
    const moved = unitsOf(one).map(({ demand, arcs }) => ({
      demand,
      arcs: arcs.map(({ point, cost }) => ({ point: point + shift, cost })),
    }));
    const { cost, bound, partCount } = inParts(
      problemOf([...one.points, ...one.points], [...unitsOf(one), ...moved]),
      70,
    );
    expect(partCount).toBe(2);
    expect(bound).toBeCloseTo(cost, 6);
    expect(cost).toBeCloseTo(2 * solvePlacement(one, patient, exact).cost, 6);
  });
});

test("a grid of 400 units in parts costs no less than the bound known and its bound is no more than the cost known", () => {
  const town = knownStreets(join(import.meta.dirname, "../fixtures/placement")).find((one) => one.name === "town-400a");
  if (!town) throw new Error("no town-400a");
  const plan = planParts(town.problem, 100);
  const answers = plan.points.map((_, part) => solvePart(town.problem, plan, part, patient, { gap: 0.01, seed: 1 }));
  const { cost, bound, pointOf } = joinParts(town.problem, plan, answers);
  expect(plan.points.length).toBeGreaterThan(2);
  expectFeasible(town.problem, pointOf);
  expect(leftOutCount(pointOf)).toBe(0);
  expect(cost).toBeGreaterThanOrEqual(town.provenBound);
  expect(bound).toBeLessThanOrEqual(town.cost);
});

test("where ports are short, as many one-port units are served in parts as can be at all, and the bound holds for those", () => {
  const graph = fc.record({
    reach: fc.array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 3 })), {
      minLength: 16,
      maxLength: 28,
    }),
    costs: fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 3, maxLength: 3 }),
    ports: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 12, maxLength: 12 }),
  });
  let short = 0;
  fc.assert(
    fc.property(graph, ({ reach, costs, ports }) => {
      const problem = problemOf(
        ports.map((capacity) => ({ modules: [{ capacity, cost: 30 }] })),
        reach.map(([first, count], unit) => ({
          demand: 1,
          arcs: Array.from({ length: count }, (_, at) => ({
            point: Math.min(11, first + at),
            cost: (costs[at] ?? 1) + (unit % 7),
          })).filter(({ point }, at, all) => all.findIndex((one) => one.point === point) === at),
        })),
      );
      const whole = solvePlacement(problem, patient, exact);
      const parts = inParts(problem, 6);
      expectFeasible(problem, parts.pointOf);
      expect(leftOutCount(parts.pointOf)).toBe(whole.unserved.length);
      if (whole.unserved.length > 0) short += 1;
      expect(parts.bound).toBeLessThanOrEqual(leastOf(problem, parts.pointOf) + 1e-6);
      expect(parts.cost).toBeGreaterThanOrEqual(leastOf(problem, parts.pointOf) - 1e-6);
    }),
    { numRuns: 150, seed: 8 },
  );
  expect(short).toBeGreaterThan(20);
});

/** The least cost of serving just the units a layout serves. */
function leastOf({ points, ...problem }: Problem, pointOf: Int32Array): number {
  const units = unitsOf({ points, ...problem }).filter((_, unit) => pointOf[unit] !== -1);
  const { cost, status } = solvePlacement(problemOf(points, units), patient, exact);
  expect(status).toBe("optimal");
  return cost;
}

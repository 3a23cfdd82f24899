import { expect, test } from "vitest";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";
import { costByHighs, solveByHighs } from "./placementJudge.ts";

const streets = Object.entries(streetKinds).map(
  ([name, kind]) => [name, madeStreet({ ...kind, unitCount: 24, seed: 1 })] as const,
);

test.each(streets)("HiGHS proves the same cost of a street of 24 units, %s", async (_, problem) => {
  const { cost, status } = solvePlacement(problem, { elapsedS: () => 0, stopped: () => false }, { gap: 0, seed: 1 });
  expect(status).toBe("optimal");
  expect(cost).toBeCloseTo((await costByHighs(problem)) ?? Number.NaN, 2);
});

test("HiGHS, given our layout of a street of 100 units as its start, has one no dearer at once", async () => {
  const problem = madeStreet({ ...streetKinds.crowded, unitCount: 100, seed: 1 });
  const watch = { elapsedS: () => 0, stopped: () => false };
  const { cost, pointOf } = solvePlacement(problem, watch, { gap: 0, seed: 1, isQuick: true });
  const without = await solveByHighs(problem, 0.01, null);
  const from = await solveByHighs(problem, 0.01, pointOf);
  expect(from.cost).toBeLessThanOrEqual(cost + 1e-6);
  expect(without.cost).toBeGreaterThan(from.cost);
  expect(from.bound).toBeLessThanOrEqual(cost);
});

import { expect, test } from "vitest";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";
import { costByHighs } from "./placementJudge.ts";

const routes = Object.entries(streetKinds).flatMap(([name, kind]) =>
  [1, 2].map((seed) => [`${name}, seed ${seed}`, madeStreet({ ...kind, unitCount: 24, seed })] as const),
);

test.each(routes)("HiGHS proves the same cost of a street of 24 units: %s", async (_, problem) => {
  const { cost, status } = solvePlacement(problem, { elapsedS: () => 0, stopped: () => false }, { gap: 0 });
  expect(status).toBe("optimal");
  expect(cost).toBeCloseTo((await costByHighs(problem)) ?? Number.NaN, 2);
});

import { expect, test } from "vitest";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { madeStreet, streetKinds } from "../fixtures/placement/madeStreet.ts";
import { costByHighs } from "./placementJudge.ts";

const streets = Object.entries(streetKinds).map(
  ([name, kind]) => [name, madeStreet({ ...kind, unitCount: 24, seed: 1 })] as const,
);

test.each(streets)("HiGHS proves the same cost of a street of 24 units, %s", async (_, problem) => {
  const { cost, status } = solvePlacement(problem, { elapsedS: () => 0, stopped: () => false }, { gap: 0, seed: 1 });
  expect(status).toBe("optimal");
  expect(cost).toBeCloseTo((await costByHighs(problem)) ?? Number.NaN, 2);
});

import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { solvePlacement } from "../../core/placement/solvePlacement.ts";
import { knownStreets } from "../fixtures/placement/readStreet.ts";

const streets = knownStreets(join(import.meta.dirname, "../fixtures/placement"));

describe("streets with known costs", () => {
  test.each(streets.filter((one) => one.isOptimal).map((one) => [one.name, one] as const))(
    "%s: the optimum is found and proven",
    (_, { problem, cost }) => {
      const solved = solvePlacement(problem, { elapsedS: () => 0, stopped: () => false }, { gap: 0, seed: 1 });
      expect(solved.status).toBe("optimal");
      expect(solved.cost).toBeCloseTo(cost, 1);
    },
  );

  test.each(streets.filter((one) => !one.isOptimal).map((one) => [one.name, one] as const))(
    "%s: no dearer than the best known, within half a percent of our bound, and not below the bound known",
    (_, { problem, cost, provenBound }) => {
      const solved = solvePlacement(problem, { elapsedS: () => 0, stopped: () => false }, { gap: 0.005, seed: 1 });
      expect(solved.cost).toBeLessThanOrEqual(cost + 0.05);
      expect(solved.bound).toBeGreaterThanOrEqual(0.995 * solved.cost);
      expect(solved.cost).toBeGreaterThanOrEqual(provenBound);
    },
  );
});

import { expect, test } from "vitest";
import { searchGeneral } from "../../core/placement/general/searchGeneral.ts";
import type { Problem } from "../../core/placement/problem.ts";
import { drawer } from "../fixtures/placement/madeStreet.ts";
import { problemOf } from "../fixtures/placement/problemOf.ts";
import { costByHighs } from "./placementJudge.ts";

/** Units and points scattered over a square, every unit in reach of every point, two modules a point. */
function scattered(seed: number): Problem {
  const draw = drawer(seed);
  const place = () => ({ x: 100 * draw(), y: 100 * draw() });
  const points = Array.from({ length: 7 }, place);
  const units = Array.from({ length: 16 }, place);
  return problemOf(
    points.map(() => {
      const cost = Math.round(40 + 60 * draw());
      return {
        modules: [
          { capacity: 8, cost },
          { capacity: 13, cost: cost + 25 },
        ],
      };
    }),
    units.map((unit) => ({
      demand: 1 + Math.floor(4 * draw()),
      arcs: points.map(({ x, y }, point) => ({ point, cost: Math.round(Math.hypot(unit.x - x, unit.y - y)) })),
    })),
  );
}

test.each([1, 2, 3, 4])("HiGHS proves the same cost of units scattered over a square, seed %i", async (seed) => {
  const problem = scattered(seed);
  const found = searchGeneral(problem, { elapsedS: () => 0, stopped: () => false }, { seed: 1, gap: 0 });
  expect(found?.bound).toBe(found?.cost);
  expect(found?.cost).toBeCloseTo((await costByHighs(problem)) ?? Number.NaN, 2);
});

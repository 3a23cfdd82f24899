import { expect, test } from "vitest";
import { nearPairs } from "../../../core/exchange/nearPairs.ts";

const at = (eastM: number, northM = 0) => ({ eastM, northM });

test("pairs within reach come shortest first, points in one place make none", () => {
  expect(nearPairs([at(-5), at(0), at(0), at(3), at(40)], 10, 8)).toEqual([
    { from: 1, to: 3, apartM: 3 },
    { from: 2, to: 3, apartM: 3 },
    { from: 0, to: 1, apartM: 5 },
    { from: 0, to: 2, apartM: 5 },
    { from: 0, to: 3, apartM: 8 },
  ]);
});

test("only the nearest of each point count, from either side", () => {
  expect(nearPairs([at(0), at(1), at(3), at(6)], 10, 1).map(({ from, to }) => [from, to])).toEqual([
    [0, 1],
    [1, 2],
    [2, 3],
  ]);
});

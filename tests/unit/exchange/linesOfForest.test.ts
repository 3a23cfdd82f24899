import { expect, test } from "vitest";
import { linesOfForest } from "../../../core/exchange/linesOfForest.ts";

const at = (eastM: number, northM = 0) => ({ eastM, northM });

test("the longest run of a tree comes first, then its branches from where they leave", () => {
  const points = [at(0), at(10), at(20), at(30), at(20, 5), at(20, 9)];
  const joins = [
    [0, 1],
    [1, 2],
    [2, 3],
    [2, 4],
    [4, 5],
  ] as const;
  expect(linesOfForest(points, joins)).toEqual([
    [0, 1, 2, 3],
    [2, 4, 5],
  ]);
});

test("points joined to none are runs of their own", () => {
  expect(linesOfForest([at(0), at(5), at(9)], [[1, 2]])).toEqual([[0], [1, 2]]);
});

test("a run of 5,000 points is one line", () => {
  const points = Array.from({ length: 5000 }, (_, n) => at(n));
  const joins = points.slice(1).map((_, n) => [n, n + 1] as const);
  expect(linesOfForest(points, joins)).toEqual([points.map((_, n) => n)]);
});

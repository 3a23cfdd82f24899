import { expect, test } from "vitest";
import { between, mulberry32 } from "../../../../assets/demo/mulberry32.ts";

test("a seed gives the same stream every time", () => {
  const [first, second] = [mulberry32(7), mulberry32(7)];
  expect(Array.from({ length: 50 }, first)).toEqual(Array.from({ length: 50 }, second));
});

test("draws are spread evenly between the bounds", () => {
  const draw = mulberry32(3);
  const draws = Array.from({ length: 10_000 }, () => between(draw, 10, 20));
  expect(Math.min(...draws)).toBeGreaterThanOrEqual(10);
  expect(Math.max(...draws)).toBeLessThan(20);
  expect(draws.reduce((sum, each) => sum + each, 0) / draws.length).toBeCloseTo(15, 0);
});

import { expect, it } from "vitest";
import { breakingFrac } from "../../../core/strand/breakingFrac.ts";

it("half the rated strength is 0.5 of it", () => {
  expect(breakingFrac(14790, 29580)).toBe(0.5);
});

it.each([
  [-1, 29580],
  [1, 0],
  [1, Number.NaN],
])("a tension of %d on a strength of %d is refused", (tensionN, breakingN) => {
  expect(() => breakingFrac(tensionN, breakingN)).toThrow(RangeError);
});

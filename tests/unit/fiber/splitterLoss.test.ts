import { expect, it } from "vitest";
import { idealSplitLossDb, splitLossLimitDb, tapLossDb } from "../../../core/fiber/splitterLoss.ts";

it("one leg splits nothing: no ideal loss, and no splitter to limit", () => {
  expect(idealSplitLossDb(1)).toBe(0);
  expect(() => splitLossLimitDb(1)).toThrow(RangeError);
});

it.each([0, 2.5, Number.NaN, Number.POSITIVE_INFINITY])("a splitter with %s legs is refused", (legCount) => {
  expect(() => idealSplitLossDb(legCount)).toThrow(RangeError);
  expect(() => splitLossLimitDb(legCount)).toThrow(RangeError);
});

it("what a tap loses of itself adds to its leg", () => {
  expect(tapLossDb(0.1, 0.3)).toBeCloseTo(10.3, 12);
});

it("a leg with no light, more than all of it, or a gain is refused", () => {
  for (const [legFrac, excessDb] of [
    [0, 0],
    [1.1, 0],
    [0.5, -1],
    [Number.NaN, 0],
  ] as const) {
    expect(() => tapLossDb(legFrac, excessDb)).toThrow(RangeError);
  }
});

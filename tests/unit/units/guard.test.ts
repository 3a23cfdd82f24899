import { expect, it } from "vitest";
import { requireFinite, requireNotNegative, requirePositive } from "../../../core/units/guard.ts";

it("a span of nought, less, infinity or no number is refused by its name", () => {
  for (const spanM of [0, -1, Number.POSITIVE_INFINITY, Number.NaN]) {
    expect(() => requirePositive("spanM", spanM)).toThrow("spanM must be more than 0 and finite");
  }
  expect(() => requirePositive("spanM", 1)).not.toThrow();
});

it("no ice is allowed, less than none is not", () => {
  expect(() => requireNotNegative("iceM", 0)).not.toThrow();
  for (const iceM of [-0.01, Number.POSITIVE_INFINITY, Number.NaN]) {
    expect(() => requireNotNegative("iceM", iceM)).toThrow(RangeError);
  }
});

it("a finite result passes through and any other does not", () => {
  expect(requireFinite("sagM", -2)).toBe(-2);
  expect(() => requireFinite("sagM", Number.NEGATIVE_INFINITY)).toThrow("sagM must be a finite number");
});

import { expect, it } from "vitest";
import { significantText } from "../../../core/units/significantText.ts";

it.each([
  [1234567, "1235000"],
  [4123.456, "4123"],
  [0.0000115, "0.0000115"],
  [0.01, "0.01"],
  [-12.3456, "-12.35"],
  [9.99996, "10"],
  [0, "0"],
])("%d with four digits that count reads %s", (value, text) => {
  expect(significantText(value, 4)).toBe(text);
});

it("what is no number has no digits", () => {
  expect(() => significantText(Number.NaN, 4)).toThrow(RangeError);
});

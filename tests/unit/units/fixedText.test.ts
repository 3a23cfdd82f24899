import { expect, it } from "vitest";
import { fixedText } from "../../../core/units/fixedText.ts";

it("a figure keeps its decimals, and one that rounds to nought has no minus", () => {
  expect([fixedText(2, 2), fixedText(-0.004, 2), fixedText(-0.005001, 2)]).toEqual(["2.00", "0.00", "-0.01"]);
});

it("what is no number is refused", () => {
  expect(() => fixedText(Number.NaN, 1)).toThrow(RangeError);
});

import { expect, it } from "vitest";
import { formatWeightPerLength } from "../../../core/units/formatWeightPerLength.ts";

it("a bundle of 0.202 lb/ft reads 0.202 lb/ft or 2.95 N/m", () => {
  expect(formatWeightPerLength(2.947968, "us")).toBe("0.202 lb/ft");
  expect(formatWeightPerLength(2.947968, "metric")).toBe("2.95 N/m");
});

import { expect, it } from "vitest";
import { formatPressure } from "../../../core/units/formatPressure.ts";

it("the wind of the heavy district reads 4.00 psf or 192 Pa", () => {
  expect(formatPressure(191.521, "us")).toBe("4.00 psf");
  expect(formatPressure(191.521, "metric")).toBe("192 Pa");
});

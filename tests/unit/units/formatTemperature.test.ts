import { expect, it } from "vitest";
import { formatTemperature } from "../../../core/units/formatTemperature.ts";

it("a stringing temperature of 60 degrees Fahrenheit reads 60 °F or 16 °C", () => {
  expect(formatTemperature(15.5556, "us")).toBe("60 °F");
  expect(formatTemperature(15.5556, "metric")).toBe("16 °C");
});

it("a frost of nearly nought reads 0 °C, without a minus", () => {
  expect(formatTemperature(-0.3, "metric")).toBe("0 °C");
});

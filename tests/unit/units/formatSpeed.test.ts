import { expect, it } from "vitest";
import { formatSpeed } from "../../../core/units/formatSpeed.ts";

it("a gust of 90 mph reads so, or 40.2 m/s", () => {
  expect(formatSpeed(40.2336, "us")).toBe("90 mph");
  expect(formatSpeed(40.2336, "metric")).toBe("40.2 m/s");
});

import { expect, it } from "vitest";
import { formatForce } from "../../../core/units/formatForce.ts";

it("a pull of 378.75 lbf reads 379 lbf or 1.68 kN", () => {
  expect(formatForce(1684.764, "us")).toBe("379 lbf");
  expect(formatForce(1684.764, "metric")).toBe("1.68 kN");
});

it("a pull under a kilonewton reads in newtons, and the step between them is not printed twice", () => {
  expect(formatForce(378.6, "metric")).toBe("379 N");
  expect(formatForce(999.4, "metric")).toBe("999 N");
  expect(formatForce(999.6, "metric")).toBe("1.00 kN");
});

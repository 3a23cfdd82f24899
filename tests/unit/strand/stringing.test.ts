import { expect, it } from "vitest";
import { parabolicSagM } from "../../../core/strand/parabola.ts";
import { stringingHorizontalN } from "../../../core/strand/stringing.ts";

it("strung to 1 % a span of 45 m sags 0.45 m", () => {
  expect(parabolicSagM(45, 3, stringingHorizontalN(45, 3, 0.01))).toBeCloseTo(0.45, 12);
});

it("no strand is strung without any sag", () => {
  expect(() => stringingHorizontalN(45, 3, 0)).toThrow("sagFrac");
});

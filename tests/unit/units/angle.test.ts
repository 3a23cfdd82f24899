import { expect, it } from "vitest";
import { degFromRad, radFromDeg } from "../../../core/units/angle.ts";

it("a right angle is 90 degrees or pi / 2", () => {
  expect(radFromDeg(90)).toBe(Math.PI / 2);
  expect(degFromRad(Math.PI / 2)).toBe(90);
});

import { expect, it } from "vitest";
import { degCFromDegF, degFFromDegC } from "../../../core/units/temperature.ts";

it("water freezes at 32 and boils at 212 degrees Fahrenheit, and 40 below is the same on both scales", () => {
  expect([32, 212, -40].map(degCFromDegF)).toEqual([0, 100, -40]);
  expect([0, 100, -40].map(degFFromDegC)).toEqual([32, 212, -40]);
});

import { expect, it } from "vitest";
import { requireLonLat } from "../../../core/geodesy/lonLat.ts";

it("the poles and the date line are on the globe", () => {
  for (const place of [
    [180, 90],
    [-180, -90],
  ] as const)
    expect(() => requireLonLat(place)).not.toThrow();
});

it("a place past them, or of no number, is not", () => {
  for (const place of [
    [180.1, 0],
    [0, -90.1],
    [0, Number.NaN],
  ] as const)
    expect(() => requireLonLat(place)).toThrow(RangeError);
});

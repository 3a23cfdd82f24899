import { describe, expect, it } from "vitest";
import { distanceM } from "../../../core/geodesy/distance.ts";

describe("ground distance", () => {
  it("a pole is 0 m from itself, and as far from the next as the next is from it", () => {
    expect(distanceM([-83, 40], [-83, 40])).toBe(0);
    expect(distanceM([-83, 40], [-82.9988, 40])).toBe(distanceM([-82.9988, 40], [-83, 40]));
  });

  it("a span over the date line is as short as any other", () => {
    expect(distanceM([179.9995, 0], [-179.9995, 0])).toBeCloseTo(111.3195, 4);
  });

  it("a pole off the globe is refused: the usual sign of latitude and longitude swapped", () => {
    expect(() => distanceM([40, -123], [40, -83])).toThrow("latitude must lie within 90 degrees");
    expect(() => distanceM([-83, 40], [181, 40])).toThrow("longitude must lie within 180 degrees");
    expect(() => distanceM([Number.NaN, 40], [0, 0])).toThrow(RangeError);
  });
});

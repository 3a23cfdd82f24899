import { describe, expect, it } from "vitest";
import { cellOf, cellsAround } from "../../../core/plant/spatialGrid.ts";

describe("the squares of the plane", () => {
  it("counts west and south of the origin as below zero", () => {
    expect(cellOf({ eastM: -0.1, northM: 250 })).toBe("-1 2");
  });

  it("looks into one square where the circle lies inside it", () => {
    expect(cellsAround({ eastM: 50, northM: 50 }, 40)).toEqual(["0 0"]);
  });

  it("looks into every square the circle may touch", () => {
    expect(cellsAround({ eastM: 90, northM: 50 }, 20)).toEqual(["0 0", "1 0"]);
    expect(cellsAround({ eastM: 0, northM: 0 }, 91.44)).toHaveLength(4);
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a radius of %s", (radiusM) => {
    expect(() => cellsAround({ eastM: 0, northM: 0 }, radiusM)).toThrow(RangeError);
  });
});

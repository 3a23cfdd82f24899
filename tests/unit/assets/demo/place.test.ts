import { describe, expect, test } from "vitest";
import { bearingRadOf, demoPlace, lonLatOf, step } from "../../../../assets/demo/place.ts";
import { distanceM } from "../../../../core/geodesy/distance.ts";

describe("the demo's grid", () => {
  test("its origin is where the place says", () => {
    expect(lonLatOf({ eastM: 0, northM: 0 })).toEqual({
      lonDeg: demoPlace.originLonDeg,
      latDeg: demoPlace.originLatDeg,
    });
  });

  test("within 2 km of the origin a span of 50 m keeps its length on the ellipsoid to 2 cm", () => {
    const a = lonLatOf({ eastM: 1400, northM: 700 });
    const b = lonLatOf({ eastM: 1440, northM: 730 });
    expect(Math.abs(distanceM([a.lonDeg, a.latDeg], [b.lonDeg, b.latDeg]) - 50)).toBeLessThan(0.02);
  });

  test("going east with something on the right puts it to the south", () => {
    const point = step({ eastM: 0, northM: 0 }, Math.PI / 2, 10, 3);
    expect(point.eastM).toBeCloseTo(10, 9);
    expect(point.northM).toBeCloseTo(-3, 9);
    expect(bearingRadOf({ eastM: 0, northM: 0 }, { eastM: 5, northM: 0 })).toBeCloseTo(Math.PI / 2, 12);
  });
});

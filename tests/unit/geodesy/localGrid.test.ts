import { describe, expect, it } from "vitest";
import { distanceM } from "../../../core/geodesy/distance.ts";
import { openLocalGrid } from "../../../core/geodesy/localGrid.ts";

/** Largest difference, m, between plane and ellipsoid over spans of 60 m in eight directions round a ring about the origin. */
function worstSpanErrorM(latDeg: number, ringM: number): number {
  const grid = openLocalGrid({ lonDeg: -83, latDeg });
  const turns = Array.from({ length: 8 }, (_, index) => (index * Math.PI) / 4);
  let worstM = 0;
  for (const bearing of turns) {
    const from = { eastM: ringM * Math.sin(bearing), northM: ringM * Math.cos(bearing) };
    for (const turn of turns) {
      const to = { eastM: from.eastM + 60 * Math.sin(turn), northM: from.northM + 60 * Math.cos(turn) };
      worstM = Math.max(worstM, Math.abs(distanceM(grid.toLonLat(from), grid.toLonLat(to)) - 60));
    }
  }
  return worstM;
}

describe("the plane a route is measured on", () => {
  it("its origin is 0 east, 0 north", () => {
    const { eastM, northM } = openLocalGrid({ lonDeg: -83, latDeg: 40 }).toGrid([-83, 40]);
    expect(eastM).toBeCloseTo(0, 9);
    expect(northM).toBeCloseTo(0, 9);
  });

  it("east and north are positive and are ground metres", () => {
    const { eastM, northM } = openLocalGrid({ lonDeg: -83, latDeg: 40 }).toGrid([-82.9995, 40.0005]);
    expect(eastM).toBeGreaterThan(0);
    expect(northM).toBeGreaterThan(0);
    expect(Math.hypot(eastM, northM)).toBeCloseTo(70.03704, 5);
  });

  it.each([0, 25, 40, 65])(
    "at latitude %s a span of 60 m agrees with the ellipsoid far within a millimetre",
    (latDeg) => {
      expect(worstSpanErrorM(latDeg, 1000)).toBeLessThan(0.000001);
      expect(worstSpanErrorM(latDeg, 5000)).toBeLessThan(0.00002);
      expect(worstSpanErrorM(latDeg, 20000)).toBeLessThan(0.0003);
    },
  );

  it("a place goes to the plane and back within a thousandth of a millimetre", () => {
    const grid = openLocalGrid({ lonDeg: -83, latDeg: 40 });
    for (const place of [
      [-83.2, 40.1],
      [-82.95, 39.9],
      [-83, 40],
    ] as const) {
      expect(distanceM(place, grid.toLonLat(grid.toGrid(place)))).toBeLessThan(0.000001);
    }
  });

  it("a route over the date line stays in one piece", () => {
    const grid = openLocalGrid({ lonDeg: 179.9999, latDeg: -17 });
    const span = grid.toGrid([-179.9999, -17]);
    expect(span.eastM).toBeCloseTo(distanceM([179.9999, -17], [-179.9999, -17]), 5);
  });

  it("an origin off the globe is refused", () => {
    expect(() => openLocalGrid({ lonDeg: 0, latDeg: 100 })).toThrow(RangeError);
  });
});

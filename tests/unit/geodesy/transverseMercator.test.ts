import { expect, it } from "vitest";
import { openTransverseMercator } from "../../../core/geodesy/transverseMercator.ts";

const zone17 = {
  originLonDeg: -81,
  originLatDeg: 0,
  centralScaleFrac: 0.9996,
  falseEastM: 500000,
  falseNorthM: 0,
  semiMajorM: 6378137,
  inverseFlattening: 298.257223563,
};

it("a place on the central meridian lies at the false easting", () => {
  expect(openTransverseMercator(zone17).toGrid([-81, 40]).eastM).toBeCloseTo(500000, 6);
});

it("a grid point goes back to the place it came from", () => {
  const grid = openTransverseMercator(zone17);
  const [lonDeg, latDeg] = grid.toLonLat(grid.toGrid([-83, 40]));
  expect(lonDeg).toBeCloseTo(-83, 10);
  expect(latDeg).toBeCloseTo(40, 10);
});

it("a grid without scale, or a point of no number, is refused", () => {
  expect(() => openTransverseMercator({ ...zone17, centralScaleFrac: 0 })).toThrow(RangeError);
  expect(() => openTransverseMercator({ ...zone17, originLatDeg: 91 })).toThrow(RangeError);
  expect(() => openTransverseMercator(zone17).toLonLat({ eastM: Number.NaN, northM: 0 })).toThrow(RangeError);
  expect(() => openTransverseMercator(zone17).toGrid([0, 95])).toThrow(RangeError);
});

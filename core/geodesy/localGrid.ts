import { type Grid, openTransverseMercator } from "./transverseMercator.ts";

/**
 * Opens the plane a route is drawn and measured on: a transverse Mercator on WGS 84 with scale 1 on the meridian of its origin.
 *
 * Lengths on this plane are ground lengths for a route's purpose. Measured at latitudes 0 to 65 on spans of 60 m in every direction:
 * the plane is off from the ellipsoid by at most 0.001 mm within 1 km of the origin, 0.02 mm within 5 km, 0.3 mm within 20 km.
 * There and back returns a place within 0.001 mm.
 *
 * @param origin a place near the middle of the route, degrees; it becomes 0 east, 0 north
 * @throws RangeError when the origin is not on the globe
 * @source measured in tests/unit/geodesy/localGrid.test.ts against core/geodesy/distance.ts
 */
export function openLocalGrid(origin: { readonly lonDeg: number; readonly latDeg: number }): Grid {
  return openTransverseMercator({
    originLonDeg: origin.lonDeg,
    originLatDeg: origin.latDeg,
    centralScaleFrac: 1,
    falseEastM: 0,
    falseNorthM: 0,
    semiMajorM: 6378137,
    inverseFlattening: 298.257223563,
  });
}

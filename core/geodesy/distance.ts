import geodesic from "geographiclib-geodesic";
import { requireFinite } from "../units/guard.ts";
import { type LonLat, requireLonLat } from "./lonLat.ts";

/**
 * Ground distance between two places: the shortest line on the WGS 84 ellipsoid.
 *
 * A sphere is off by up to 0.3 %, which is 10 in on a span of 330 ft; hence the ellipsoid even for a single span. Height is not
 * in it: a slope distance is longer.
 *
 * @param from,to longitude and latitude, degrees
 * @returns metres, 0 or more
 * @throws RangeError when a place is not on the globe
 * @source C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013); checked in tests/standards/distance.test.ts
 */
export function distanceM(from: LonLat, to: LonLat): number {
  requireLonLat(from);
  requireLonLat(to);
  const line = geodesic.Geodesic.WGS84.Inverse(from[1], from[0], to[1], to[0], geodesic.Geodesic.DISTANCE);
  return requireFinite("distance", line.s12 ?? Number.NaN);
}

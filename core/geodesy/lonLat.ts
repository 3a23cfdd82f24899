/** A place on the WGS 84 ellipsoid, longitude first as in GeoJSON: degrees, east and north positive. */
export type LonLat = readonly [lonDeg: number, latDeg: number];

/**
 * Refuses a place that is not on the globe: longitude beyond 180 degrees or latitude beyond 90 either way, or no number.
 *
 * @throws RangeError
 */
export function requireLonLat([lonDeg, latDeg]: LonLat): void {
  if (!(Math.abs(lonDeg) <= 180))
    throw new RangeError(`longitude must lie within 180 degrees of Greenwich, not ${lonDeg}`);
  if (!(Math.abs(latDeg) <= 90))
    throw new RangeError(`latitude must lie within 90 degrees of the equator, not ${latDeg}`);
}

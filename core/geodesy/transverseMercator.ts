import proj4 from "proj4";
import { requireFinite, requirePositive } from "../units/guard.ts";
import { type LonLat, requireLonLat } from "./lonLat.ts";

/** A place on a plane grid: metres east and north of its false origin. */
type GridPoint = { readonly eastM: number; readonly northM: number };

/** What fixes one transverse Mercator grid. */
export type TransverseMercator = {
  /** natural origin, degrees */
  readonly originLonDeg: number;
  readonly originLatDeg: number;
  /** scale on the central meridian: 1, or 0.9996 in a UTM zone */
  readonly centralScaleFrac: number;
  readonly falseEastM: number;
  readonly falseNorthM: number;
  /** semi-major axis and inverse flattening of the ellipsoid */
  readonly semiMajorM: number;
  readonly inverseFlattening: number;
};

/** Both ways between longitude and latitude and a plane grid. */
export type Grid = {
  readonly toGrid: (place: LonLat) => GridPoint;
  readonly toLonLat: (point: GridPoint) => LonLat;
};

/**
 * Opens a transverse Mercator grid. Longitude and latitude are on the grid's own ellipsoid: no datum is shifted.
 *
 * @throws RangeError when the origin is not on the globe, a size is not positive, or later a point cannot be projected
 * @source EPSG Guidance Note 7-2, method 9807; checked in tests/standards/projection.test.ts
 */
export function openTransverseMercator(grid: TransverseMercator): Grid {
  requireLonLat([grid.originLonDeg, grid.originLatDeg]);
  requirePositive("centralScaleFrac", grid.centralScaleFrac);
  requirePositive("semiMajorM", grid.semiMajorM);
  requirePositive("inverseFlattening", grid.inverseFlattening);
  const plane = [
    `+proj=tmerc +lon_0=${grid.originLonDeg} +lat_0=${grid.originLatDeg} +k=${grid.centralScaleFrac}`,
    `+x_0=${requireFinite("falseEastM", grid.falseEastM)} +y_0=${requireFinite("falseNorthM", grid.falseNorthM)}`,
    `+a=${grid.semiMajorM} +rf=${grid.inverseFlattening} +units=m +no_defs`,
  ].join(" ");
  const globe = `+proj=longlat +a=${grid.semiMajorM} +rf=${grid.inverseFlattening} +no_defs`;
  const converter = proj4(globe, plane);
  return {
    toGrid(place) {
      requireLonLat(place);
      const point = converter.forward({ x: place[0], y: place[1] });
      return { eastM: requireFinite("eastM", point.x), northM: requireFinite("northM", point.y) };
    },
    toLonLat({ eastM, northM }) {
      const place = converter.inverse({ x: requireFinite("eastM", eastM), y: requireFinite("northM", northM) });
      return [requireFinite("longitude", place.x), requireFinite("latitude", place.y)];
    },
  };
}

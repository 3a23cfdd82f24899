import { openLocalGrid } from "../../core/geodesy/localGrid.ts";

/** The invented place the demo route stands in, and the names its files use. */
export const demoPlace = {
  routeName: "Marrow Bend, Tallow Road",
  project: "Demo route",
  place: "Marrow Bend",
  county: "Quernstone County",
  company: "Marrow Bend Fiber",
  powerOwner: "Quernstone Electric",
  telephoneOwner: "Quernstone Telephone",
  /** Middle of the west end of the main line, in open farm land. */
  originLonDeg: -94.0263,
  originLatDeg: 41.0718,
} as const;

/** A point on the demo's own grid, from the origin of the place. */
export type Point = { readonly eastM: number; readonly northM: number };

/** Feet to metres, exact. The demo's sizes are thought of in feet, as its files are written. */
export function feet(lengthFt: number): number {
  return lengthFt * 0.3048;
}

const grid = openLocalGrid({ lonDeg: demoPlace.originLonDeg, latDeg: demoPlace.originLatDeg });

/** WGS-84 longitude and latitude of a grid point, degrees. */
export function lonLatOf(point: Point): { readonly lonDeg: number; readonly latDeg: number } {
  const [lonDeg, latDeg] = grid.toLonLat(point);
  return { lonDeg, latDeg };
}

/**
 * The point reached from another by going along a bearing and then off to its right.
 *
 * @param bearingRad  clockwise from north
 * @param rightM  negative to the left
 */
export function step(from: Point, bearingRad: number, alongM: number, rightM: number): Point {
  const [sin, cos] = [Math.sin(bearingRad), Math.cos(bearingRad)];
  return { eastM: from.eastM + alongM * sin + rightM * cos, northM: from.northM + alongM * cos - rightM * sin };
}

/** Horizontal distance between two points, m. */
export function apartM(a: Point, b: Point): number {
  return Math.hypot(a.eastM - b.eastM, a.northM - b.northM);
}

/** Bearing from one point to another, clockwise from north, radians. */
export function bearingRadOf(from: Point, to: Point): number {
  return Math.atan2(to.eastM - from.eastM, to.northM - from.northM);
}

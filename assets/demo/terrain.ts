import { feet, type Point } from "./place.ts";
import { type Bay, beside } from "./spans.ts";

/** Elevation of the ground at a point, m. */
export type Terrain = (point: Point) => number;

const creekDepthM = feet(7);
const valleyHalfWidthM = feet(120);

/**
 * Rolling farm land with a creek's valley under one span.
 *
 * @param creekBay  the span the creek runs under, square to it at the middle
 */
export function rollingGround(creekBay: Bay): Terrain {
  const middle = beside(creekBay, creekBay.lengthM / 2, 0);
  return (point) => {
    const hillsM =
      feet(9) * Math.sin(point.eastM / 260 + 0.6) +
      feet(5) * Math.sin(point.northM / 170 + 1.9) +
      feet(2) * Math.sin((point.eastM + point.northM) / 83);
    const offCreekM =
      (point.eastM - middle.eastM) * Math.sin(creekBay.bearingRad) +
      (point.northM - middle.northM) * Math.cos(creekBay.bearingRad);
    return feet(952) + hillsM - creekDepthM * Math.exp(-((offCreekM / valleyHalfWidthM) ** 2));
  };
}

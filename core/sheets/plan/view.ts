import type { Point } from "../../plant/geometry.ts";
import type { PaperPoint } from "../paper/displayList.ts";
import type { Scale } from "../paper/scale.ts";

/** How ground lies on paper: turned, scaled, and one ground point put on one paper point. */
export type View = {
  readonly scale: Scale;
  /** Ground is turned by this on paper, counter-clockwise, rad. */
  readonly turnRad: number;
  readonly ground: Point;
  readonly paper: PaperPoint;
};

/** Where a ground point lies on paper. */
export function toPaper(view: View, point: Point): PaperPoint {
  const mmPerM = 1000 / view.scale.denominator;
  const east = (point.eastM - view.ground.eastM) * mmPerM;
  const north = (point.northM - view.ground.northM) * mmPerM;
  const [cos, sin] = [Math.cos(view.turnRad), Math.sin(view.turnRad)];
  return [view.paper[0] + east * cos - north * sin, view.paper[1] + east * sin + north * cos];
}

/** The ground under a place of the paper. */
export function toGround(view: View, [x, y]: PaperPoint): Point {
  const mPerMm = view.scale.denominator / 1000;
  const [right, up] = [(x - view.paper[0]) * mPerMm, (y - view.paper[1]) * mPerMm];
  const [cos, sin] = [Math.cos(view.turnRad), Math.sin(view.turnRad)];
  return { eastM: view.ground.eastM + right * cos + up * sin, northM: view.ground.northM - right * sin + up * cos };
}

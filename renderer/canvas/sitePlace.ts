import type { HungPlace } from "./hungPlace.ts";
import { type Level, ringPx } from "./level.ts";
import type { GroundMark, GuyMark, StructureMark } from "./siteMarks.ts";
import { screenX, screenY, type Viewport } from "./viewport.ts";

type Px = readonly [x: number, y: number];

/** A guy's tail shows past its pole's ring, however short its lead, px. */
const leastTailPx = 12;
/** A face stands clear of the strand and what hangs on it, px. */
const leastBesidePx = 14;
const leastLengthPx = 10;

/** How far a structure reaches away from its face, whose depth nobody measured, px. */
const structureDepthPx = 9;
/** Half the arm of a ground point's cross, px. */
export const groundArmPx = 4;

/** Where a guy's tail begins and where its anchor is drawn, px. */
export function guyLinePx(mark: GuyMark, view: Viewport): { readonly from: Px; readonly anchor: Px } {
  const [x, y] = [screenX(view, mark.eastM), screenY(view, mark.northM)];
  const [dx, dy] = [screenX(view, mark.anchorEastM) - x, screenY(view, mark.anchorNorthM) - y];
  const drawnPx = Math.hypot(dx, dy);
  const ring = ringPx(view);
  const [alongX, alongY] = drawnPx > 0 ? [dx / drawnPx, dy / drawnPx] : [1, 0];
  const reach = Math.max(drawnPx, ring + leastTailPx);
  return { from: [x + alongX * ring, y + alongY * ring], anchor: [x + alongX * reach, y + alongY * reach] };
}

/** The rectangle a structure is drawn in; over the line where it passes over it. */
export function structurePlacePx(mark: StructureMark, view: Viewport, level: Level): HungPlace {
  const [lineX, lineY] = [screenX(view, mark.eastM), screenY(view, mark.northM)];
  const widthPx = Math.max(leastLengthPx, mark.lengthM * view.pxPerM);
  const turnRad = Math.atan2(mark.frame.alongY, mark.frame.alongX);
  if (mark.besideM === 0) {
    const heightPx = 2 * (level === "labels" ? leastBesidePx + structureDepthPx : leastBesidePx);
    return { x: lineX, y: lineY, strandX: lineX, strandY: lineY, widthPx, heightPx, turnRad };
  }
  const awayPx = Math.max(leastBesidePx, mark.besideM * view.pxPerM) + structureDepthPx / 2;
  const [x, y] = [lineX + mark.sideX * awayPx, lineY + mark.sideY * awayPx];
  return { x, y, strandX: lineX, strandY: lineY, widthPx, heightPx: structureDepthPx, turnRad };
}

/** Where a ground point's cross is drawn, px. */
export function groundPointPx(mark: GroundMark, view: Viewport): Px {
  return [screenX(view, mark.eastM), screenY(view, mark.northM)];
}

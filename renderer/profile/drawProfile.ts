import { drawFindingMark } from "../canvas/drawFindings.ts";
import type { Pen } from "../canvas/paint.ts";
import { drawDimensions } from "./drawDimensions.ts";
import { drawHungThings } from "./drawHungThings.ts";
import { drawBelow, drawGroundLine } from "./drawLand.ts";
import { drawOtherWires, drawOurLine } from "./drawLine.ts";
import { drawOnPoles, drawProfilePoles } from "./drawProfilePoles.ts";
import { findingMarkPoint, type ProfileFindingMark } from "./profileFindings.ts";
import type { ProfileLook, ProfileScene } from "./profileScene.ts";

/** The ground and what stands on it: nothing of it moves with an attachment. */
export function drawLand(pen: Pen, look: ProfileLook, scene: ProfileScene): void {
  drawGroundLine(pen, look, scene);
  drawBelow(pen, look, scene);
}

/** Poles, everybody's wires, our line with what hangs in it and its clearances. */
export function drawPlant(pen: Pen, look: ProfileLook, scene: ProfileScene): void {
  drawProfilePoles(pen, look, scene);
  drawOtherWires(pen, look, scene);
  drawOurLine(pen, look, scene);
  drawHungThings(pen, look, scene);
  drawDimensions(pen, look, scene);
  drawOnPoles(pen, look, scene);
}

/** Marks of the findings in sight. */
export function drawMarks(pen: Pen, { frame, ink }: ProfileLook, marks: readonly ProfileFindingMark[]): void {
  for (const mark of marks) {
    const [x, y] = findingMarkPoint(frame, mark);
    if (x < -20 || y < -20 || x > frame.widthPx + 20 || y > frame.heightPx + 20) continue;
    drawFindingMark(pen, ink, mark, [x, y]);
  }
}

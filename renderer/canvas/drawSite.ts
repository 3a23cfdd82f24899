import type { Pen, Picture } from "./paint.ts";
import { groundArmPx, groundPointPx, guyLinePx, structurePlacePx } from "./sitePlace.ts";

const anchorHalfPx = 4;
const hatchPitchPx = 5;
/** A sign is its face and two posts. */
const postPx = 5;

/** Guys as thin tails from their poles, a bar across where the anchor is; left out from afar. */
export function drawGuys(pen: Pen, { scene: { guys }, view, level, ink, shown }: Picture): void {
  if (level === "marks") return;
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1;
  pen.beginPath();
  for (const i of guys.index.within(shown)) {
    const mark = guys.marks[i];
    if (!mark) continue;
    const { from, anchor } = guyLinePx(mark, view);
    const length = Math.hypot(anchor[0] - from[0], anchor[1] - from[1]) || 1;
    const [alongX, alongY] = [(anchor[0] - from[0]) / length, (anchor[1] - from[1]) / length];
    pen.moveTo(from[0], from[1]);
    pen.lineTo(anchor[0], anchor[1]);
    pen.moveTo(anchor[0] - alongY * anchorHalfPx, anchor[1] + alongX * anchorHalfPx);
    pen.lineTo(anchor[0] + alongY * anchorHalfPx, anchor[1] - alongX * anchorHalfPx);
  }
  pen.stroke();
}

/** Buildings as a face with hatching behind it, signs as a thick face on posts, in their length beside the line; left out from afar. */
export function drawStructures(pen: Pen, { scene: { structures }, view, level, ink, shown }: Picture): void {
  if (level === "marks") return;
  pen.strokeStyle = ink.ink;
  for (const i of structures.index.within(shown)) {
    const mark = structures.marks[i];
    if (!mark) continue;
    const { x, y, widthPx, heightPx, turnRad } = structurePlacePx(mark, view, level);
    pen.save();
    pen.translate(x, y);
    pen.rotate(turnRad);
    // away from the line: behind the face
    const isBelow = mark.sideX * mark.frame.belowX + mark.sideY * mark.frame.belowY > 0;
    if (mark.besideM === 0) drawOver(pen, widthPx, heightPx);
    else if (mark.kind === "building" || mark.kind === "walkedRoof") drawFace(pen, widthPx, heightPx, isBelow ? 1 : -1);
    else drawSign(pen, widthPx, heightPx, isBelow ? 1 : -1);
    pen.restore();
  }
}

/** The line passes over it: its outline across the strand, broken so that it is not taken for a crossing. */
function drawOver(pen: Pen, widthPx: number, heightPx: number): void {
  pen.lineWidth = 1;
  pen.setLineDash([5, 3]);
  pen.beginPath();
  pen.rect(-widthPx / 2, -heightPx / 2, widthPx, heightPx);
  pen.stroke();
  pen.setLineDash([]);
}

function drawFace(pen: Pen, widthPx: number, heightPx: number, away: 1 | -1): void {
  const [half, face, back] = [widthPx / 2, (-away * heightPx) / 2, (away * heightPx) / 2];
  pen.lineWidth = 1.5;
  pen.beginPath();
  pen.moveTo(-half, back);
  pen.lineTo(-half, face);
  pen.lineTo(half, face);
  pen.lineTo(half, back);
  pen.stroke();
  pen.lineWidth = 0.75;
  pen.beginPath();
  for (let along = -half + hatchPitchPx; along < half; along += hatchPitchPx) {
    pen.moveTo(along, face);
    pen.lineTo(along - hatchPitchPx * 0.7, face + away * heightPx * 0.6);
  }
  pen.stroke();
}

function drawSign(pen: Pen, widthPx: number, heightPx: number, away: 1 | -1): void {
  const [half, face] = [widthPx / 2, (-away * heightPx) / 2];
  pen.lineWidth = 3;
  pen.beginPath();
  pen.moveTo(-half, face);
  pen.lineTo(half, face);
  pen.stroke();
  pen.lineWidth = 1;
  pen.beginPath();
  for (const along of [-half + 3, half - 3]) {
    pen.moveTo(along, face);
    pen.lineTo(along, face + away * postPx);
  }
  pen.stroke();
}

/** Measured points of the ground as small crosses on the line; drawn near enough to be told apart. */
export function drawGroundPoints(pen: Pen, { scene: { groundPoints }, view, level, ink, shown }: Picture): void {
  if (level !== "labels") return;
  const cross = (): void => {
    pen.beginPath();
    for (const i of groundPoints.index.within(shown)) {
      const mark = groundPoints.marks[i];
      if (!mark) continue;
      const [x, y] = groundPointPx(mark, view);
      pen.moveTo(x - groundArmPx, y - groundArmPx);
      pen.lineTo(x + groundArmPx, y + groundArmPx);
      pen.moveTo(x - groundArmPx, y + groundArmPx);
      pen.lineTo(x + groundArmPx, y - groundArmPx);
    }
    pen.stroke();
  };
  // paper around it, so that it is seen on the strand
  pen.strokeStyle = ink.ground;
  pen.lineWidth = 4;
  cross();
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1.25;
  cross();
}

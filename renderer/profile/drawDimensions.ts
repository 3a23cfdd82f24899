import { type ProfileStep, stepStationM } from "../../core/plant/profile.ts";
import { besideElevationM, elevationOn, type ProfileStructure } from "../../core/plant/profileSpan.ts";
import type { SpanClearance } from "../../core/plant/spanClearance.ts";
import type { Pen } from "../canvas/paint.ts";
import { besideText, leastText } from "./dimensionWords.ts";
import { writeLines } from "./drawLabel.ts";
import { placed } from "./drawLine.ts";
import { elevationY, stationAt, stationX } from "./frame.ts";
import type { ProfileLook, ProfileScene } from "./profileScene.ts";

/** Least length of a span for its clearances to be dimensioned, px. */
const dimensionedSpanPx = 260;

/** From a dimension to its figures, px. */
const asidePx = 9;

/** Radius of the ring that stands for a distance seen from its end, px. */
const endOnPx = 4.5;

/** The least clearance of each span that is wide enough, and how far buildings and signs stand beside the line. */
export function drawDimensions(pen: Pen, look: ProfileLook, { steps, leastOf }: ProfileScene): void {
  for (const step of steps) {
    if (step.span.lengthM * look.frame.pxPerM < dimensionedSpanPx) continue;
    const beside = step.span.structures.filter((one) => one.beside && one.topM !== null);
    const least = leastOf(step.span.spanId);
    if (least) drawLeast(pen, look, step, least, beside);
    for (const one of beside) drawBeside(pen, look, step, one);
  }
}

function drawLeast(
  pen: Pen,
  look: ProfileLook,
  step: ProfileStep,
  least: SpanClearance,
  beside: readonly ProfileStructure[],
): void {
  const { frame, ink, units } = look;
  const { line, lengthM } = step.span;
  if (!line) return;
  const lineM = elevationOn(step.span, line[least.condition], least.atOffsetM);
  const [x, headY] = placed(frame, step, least.atOffsetM, lineM);
  const footY = elevationY(frame, lineM - least.measuredM);
  pen.strokeStyle = ink.ink;
  pen.fillStyle = ink.ink;
  pen.lineWidth = 1;
  pen.beginPath();
  pen.moveTo(x, headY);
  pen.lineTo(x, footY);
  pen.stroke();
  pen.beginPath();
  arrowHead(pen, x, headY, 1);
  arrowHead(pen, x, footY, -1);
  pen.fill();
  const write = writeLines(pen, look, leastText(least, units));
  const endX = Math.max(stationX(frame, step.startM), stationX(frame, step.startM + lengthM));
  const isFree = beside.every(({ row }) => {
    const besideX = stationX(frame, stepStationM(step, row.offsetM));
    return besideX < x - asidePx || besideX > x + asidePx + write.widthPx;
  });
  const isRight = isFree && x + asidePx + write.widthPx < endX - asidePx;
  const topY = (headY + footY - write.heightPx) / 2;
  write.at(isRight ? x + asidePx : x - asidePx - write.widthPx, topY);
}

/** The level distance to a structure runs towards the eye: a dotted ring, as an arrow seen from its end, and its figures under the line. */
function drawBeside(pen: Pen, look: ProfileLook, step: ProfileStep, one: ProfileStructure): void {
  const { frame, ink, units } = look;
  if (!one.beside) return;
  const [x, y] = placed(frame, step, one.row.offsetM, besideElevationM(step.span, one));
  pen.beginPath();
  pen.arc(x, y, endOnPx, 0, Math.PI * 2);
  pen.fillStyle = ink.ground;
  pen.fill();
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1.25;
  pen.stroke();
  pen.beginPath();
  pen.arc(x, y, endOnPx / 3, 0, Math.PI * 2);
  pen.fillStyle = ink.ink;
  pen.fill();
  const write = writeLines(pen, look, besideText(one.beside, units));
  const leftX = x + Math.max(endOnPx, (one.row.lengthM / 2) * frame.pxPerM) + asidePx;
  const lowestY = Math.max(...[leftX, leftX + write.widthPx].map((atX) => lineY(look, step, atX)));
  write.at(leftX, Math.max(y - endOnPx, lowestY + asidePx));
}

/** Pixel row of the lowest case at a pixel column of a span; far above the page where nobody can tell. */
function lineY({ frame }: ProfileLook, { span, startM, reversed }: ProfileStep, x: number): number {
  if (!span.band) return Number.NEGATIVE_INFINITY;
  const alongM = Math.min(span.lengthM, Math.max(0, stationAt(frame, x) - startM));
  return elevationY(frame, elevationOn(span, span.band.lowerM, reversed ? span.lengthM - alongM : alongM));
}

/** The head of an arrow that points up (1) or down (-1). */
function arrowHead(pen: Pen, x: number, y: number, way: 1 | -1): void {
  pen.moveTo(x, y);
  pen.lineTo(x - 3, y + way * 9);
  pen.lineTo(x + 3, y + way * 9);
}

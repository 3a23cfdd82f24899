import type { ProfileStep } from "../../core/plant/profile.ts";
import { structureFootM } from "../../core/plant/profileSpan.ts";
import { surfaceWords } from "../canvas/crossingMarks.ts";
import { lettering } from "../canvas/ink.ts";
import type { Pen } from "../canvas/paint.ts";
import { placed } from "./drawLine.ts";
import { elevationY, type Frame, stationX } from "./frame.ts";
import type { ProfileLook, ProfileScene } from "./profileScene.ts";
import { profileWords } from "./words.ts";

/** Least length of a span for what lies under it to be named, px. */
const namedSpanPx = 110;

type Point = readonly [number, number];

/** The ground, washed where measured, and a dashed guess from foot to foot where not. */
export function drawGroundLine(pen: Pen, look: ProfileLook, { steps, footOf }: ProfileScene): void {
  const { frame, ink } = look;
  const measured = steps.flatMap((step) => (step.span.ground ? [groundPoints(frame, step, step.span.ground)] : []));
  const guessed = steps.flatMap((step) => (step.span.ground ? [] : [guessedPoints(frame, step, footOf)]));
  pen.beginPath();
  for (const points of measured) {
    pen.moveTo(points[0]?.[0] ?? 0, frame.heightPx);
    for (const [x, y] of points) pen.lineTo(x, y);
    pen.lineTo(points.at(-1)?.[0] ?? 0, frame.heightPx);
  }
  pen.fillStyle = ink.wash;
  pen.fill();
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1.25;
  strokeAll(pen, measured);
  pen.setLineDash([3, 5]);
  strokeAll(pen, guessed);
  pen.setLineDash([]);
  for (const points of guessed) writeUnknown(pen, look, points);
}

function groundPoints(frame: Frame, step: ProfileStep, ground: NonNullable<ProfileStep["span"]["ground"]>): Point[] {
  const points = ground.map(({ offsetM, groundM }) => placed(frame, step, offsetM, groundM));
  return step.reversed ? points.reverse() : points;
}

function guessedPoints(frame: Frame, step: ProfileStep, footOf: ProfileScene["footOf"]): readonly Point[] {
  return [
    [stationX(frame, step.startM), elevationY(frame, footOf(step.inPoleId))],
    [stationX(frame, step.startM + step.span.lengthM), elevationY(frame, footOf(step.outPoleId))],
  ];
}

function strokeAll(pen: Pen, lines: readonly (readonly Point[])[]): void {
  pen.beginPath();
  for (const points of lines)
    for (const [index, [x, y]] of points.entries())
      if (index === 0) pen.moveTo(x, y);
      else pen.lineTo(x, y);
  pen.stroke();
}

/** Says over a dashed ground that it is a guess, where there is room. */
function writeUnknown(pen: Pen, { ink }: ProfileLook, [from = [0, 0], to = [0, 0]]: readonly Point[]): void {
  pen.font = lettering(11 * ink.letterFrac, 400);
  if (pen.measureText(profileWords.groundUnknown).width > to[0] - from[0] - 12) return;
  pen.fillStyle = ink.soft;
  pen.textAlign = "center";
  pen.textBaseline = "bottom";
  pen.fillText(profileWords.groundUnknown, (from[0] + to[0]) / 2, Math.min(from[1], to[1]) - 6);
}

/** Crossings as a thick bar at their surface with the height they ask for above it; structures as boxes. */
export function drawBelow(pen: Pen, look: ProfileLook, { steps }: ProfileScene): void {
  const limits: LimitMark[] = [];
  for (const step of steps) {
    const names: NameMark[] = [];
    for (const one of step.span.structures) limits.push(...drawStructure(pen, look, step, one, names));
    for (const one of step.span.crossings) limits.push(...drawCrossing(pen, look, step, one, names));
    if (step.span.lengthM * look.frame.pxPerM > namedSpanPx) writeNames(pen, look, names);
  }
  drawLimits(pen, look, limits);
}

type Under<K extends "crossings" | "structures"> = ProfileStep["span"][K][number];

/** The height something asks for over its surface, px. */
type LimitMark = {
  readonly left: number;
  readonly right: number;
  readonly surfaceY: number;
  readonly limitY: number;
};

function drawCrossing(
  pen: Pen,
  look: ProfileLook,
  step: ProfileStep,
  { row, topM, limitM }: Under<"crossings">,
  names: NameMark[],
): readonly LimitMark[] {
  if (topM === null) return [];
  const { frame, ink } = look;
  const [a, y] = placed(frame, step, row.offsetM - row.widthM / 2, topM);
  const [b] = placed(frame, step, row.offsetM + row.widthM / 2, topM);
  const [left, right] = [Math.min(a, b), Math.max(a, b, Math.min(a, b) + 3)];
  pen.fillStyle = ink.ink;
  pen.fillRect(left, y - 2, right - left, 5);
  names.push({ text: surfaceWords[row.surface], x: (left + right) / 2, groundY: y });
  return limitM === null ? [] : [{ left, right, surfaceY: y, limitY: elevationY(frame, topM + limitM) }];
}

function drawStructure(
  pen: Pen,
  look: ProfileLook,
  step: ProfileStep,
  one: Under<"structures">,
  names: NameMark[],
): readonly LimitMark[] {
  const { row, topM, limitM } = one;
  if (topM === null) return [];
  const { frame, ink } = look;
  const [a, y] = placed(frame, step, row.offsetM - row.lengthM / 2, topM);
  const [b, foot] = placed(frame, step, row.offsetM + row.lengthM / 2, structureFootM(one, topM));
  const [left, right] = [Math.min(a, b), Math.max(a, b)];
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1;
  pen.setLineDash(row.besideM > 0 ? [4, 3] : []);
  pen.fillStyle = row.besideM > 0 ? ink.ground : ink.hair;
  pen.fillRect(left, y, right - left, foot - y);
  pen.strokeRect(left, y, right - left, foot - y);
  pen.setLineDash([]);
  names.push({ text: row.name, x: (left + right) / 2, groundY: elevationY(frame, topM - row.heightM) });
  return limitM === null ? [] : [{ left, right, surfaceY: y, limitY: elevationY(frame, topM + limitM) }];
}

/** Heights asked for: a line over the width of each, held up at both ends by dotted posts. */
function drawLimits(pen: Pen, { ink }: ProfileLook, limits: readonly LimitMark[]): void {
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 1;
  pen.setLineDash([1, 3]);
  pen.beginPath();
  for (const { left, right, surfaceY, limitY } of limits)
    for (const x of [left, right]) {
      pen.moveTo(x, surfaceY);
      pen.lineTo(x, limitY);
    }
  pen.stroke();
  pen.setLineDash([]);
  pen.lineWidth = 1.5;
  pen.beginPath();
  for (const { left, right, limitY } of limits) {
    pen.moveTo(left - 3, limitY);
    pen.lineTo(right + 3, limitY);
  }
  pen.stroke();
}

/** What something on the ground is called, and where it stands, px. */
type NameMark = { readonly text: string; readonly x: number; readonly groundY: number };

/** From the ground to the names under it, and from one row of names to the next, px at the usual size of letters. */
const [underGroundPx, nameRowPx] = [24, 13];

/** Names under the ground, one that would lie on another a row lower. */
function writeNames(pen: Pen, { ink }: ProfileLook, names: readonly NameMark[]): void {
  pen.font = lettering(11 * ink.letterFrac, 400);
  pen.fillStyle = ink.ink;
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  const written: { readonly row: number; readonly fromX: number; readonly toX: number }[] = [];
  for (const { text, x, groundY } of names) {
    const halfPx = pen.measureText(text).width / 2 + 4;
    let row = 0;
    while (written.some((one) => one.row === row && one.toX > x - halfPx && one.fromX < x + halfPx)) row += 1;
    written.push({ row, fromX: x - halfPx, toX: x + halfPx });
    pen.fillText(text, x, groundY + (underGroundPx + row * nameRowPx) * ink.letterFrac);
  }
}

import { metresPerFoot } from "../../core/units/constants.ts";
import { fixedText } from "../../core/units/fixedText.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { type Ink, lettering } from "../canvas/ink.ts";
import type { Pen } from "../canvas/paint.ts";
import { curveColumns, type LaidCurve } from "./curveColumns.ts";
import { fiberAtX, fiberX, levelAtY, levelY, margins, type TraceFrame } from "./traceFrame.ts";

/** What a trace is drawn with. */
export type TraceLook = { readonly frame: TraceFrame; readonly ink: Ink; readonly units: UnitSystem };

/** Dashes of the curves laid over the one told about, told apart without colour. */
export const otherDashes: readonly (readonly number[])[] = [
  [6, 3],
  [2, 3],
  [9, 3, 2, 3],
];

/** A curve, no peak of it lost. */
export function drawCurve(pen: Pen, { frame, ink }: TraceLook, curve: LaidCurve, dash: readonly number[]): void {
  const y = (levelDb: number) => Math.max(-50, Math.min(frame.heightPx + 50, levelY(frame, levelDb)));
  pen.save();
  pen.beginPath();
  pen.rect(margins.leftPx, 0, frame.widthPx, frame.heightPx - margins.bottomPx + 4);
  pen.clip();
  pen.strokeStyle = dash.length === 0 ? ink.ink : ink.soft;
  pen.lineWidth = dash.length === 0 ? 1.4 : 1;
  pen.setLineDash([...dash]);
  pen.beginPath();
  curveColumns(curve, frame).forEach(({ x, highDb, lowDb, firstDb, lastDb }, index) => {
    if (index === 0) pen.moveTo(x, y(firstDb));
    else pen.lineTo(x, y(firstDb));
    if (highDb === lowDb) return;
    pen.lineTo(x, y(highDb));
    pen.lineTo(x, y(lowDb));
    pen.lineTo(x, y(lastDb));
  });
  pen.stroke();
  pen.restore();
}

/** A place along the fiber: a line down from its name. */
export type TraceMark = {
  readonly hubM: number;
  readonly name: string;
  /** seen: a full line; unseen: dashed; unmatched: a triangle, nothing is drawn there; broken: a diamond. */
  readonly sign: "seen" | "unseen" | "unmatched" | "broken" | "lead";
  readonly isChosen: boolean;
};

/** Places along the fiber, names where there is room for them, the chosen one first. */
export function drawMarks(pen: Pen, { frame, ink }: TraceLook, marks: readonly TraceMark[]): void {
  const bottomY = frame.heightPx - margins.bottomPx;
  const fontPx = 11 * ink.letterFrac;
  const taken: { readonly row: number; readonly fromX: number; readonly toX: number }[] = [];
  const order = [...marks].sort((a, b) => Number(b.isChosen) - Number(a.isChosen) || rank(a) - rank(b));
  for (const mark of order) {
    const x = Math.round(fiberX(frame, mark.hubM)) + 0.5;
    if (x < margins.leftPx || x > frame.widthPx) continue;
    pen.strokeStyle = mark.isChosen ? ink.accent : mark.sign === "lead" ? ink.hair : ink.soft;
    pen.lineWidth = mark.isChosen ? 2 : 1;
    pen.setLineDash(mark.sign === "unseen" ? [3, 4] : []);
    line(pen, [x, 50], [x, bottomY]);
    pen.setLineDash([]);
    drawSign(pen, ink, mark, x);
    pen.font = lettering(fontPx, mark.isChosen ? 600 : 400);
    const widthPx = pen.measureText(mark.name).width;
    const fromX = Math.min(x + 6, frame.widthPx - widthPx - 4);
    const row = [0, 1, 2].find(
      (one) => !taken.some((other) => other.row === one && other.fromX < fromX + widthPx + 8 && other.toX > fromX - 8),
    );
    if (row === undefined || mark.name === "") continue;
    taken.push({ row, fromX, toX: fromX + widthPx });
    pen.fillStyle = mark.isChosen ? ink.accent : ink.ink;
    pen.textAlign = "left";
    pen.textBaseline = "middle";
    pen.fillText(mark.name, fromX, 10 + row * 14);
    if (row < 2) {
      pen.strokeStyle = ink.hair;
      pen.lineWidth = 1;
      line(pen, [x, 14 + row * 14], [x, 44]);
    }
  }
}

function rank({ sign }: TraceMark): number {
  return ["broken", "unmatched", "seen", "unseen", "lead"].indexOf(sign);
}

function drawSign(pen: Pen, ink: Ink, { sign, isChosen }: TraceMark, x: number): void {
  const colour = isChosen ? ink.accent : ink.ink;
  pen.strokeStyle = colour;
  pen.fillStyle = sign === "unseen" || sign === "unmatched" ? ink.ground : colour;
  pen.lineWidth = 1.5;
  pen.beginPath();
  if (sign === "broken")
    polygon(pen, [
      [x, 42],
      [x + 6, 48],
      [x, 54],
      [x - 6, 48],
    ]);
  else if (sign === "unmatched")
    polygon(pen, [
      [x, 42],
      [x + 6, 53],
      [x - 6, 53],
    ]);
  else pen.arc(x, 48, sign === "lead" ? 2 : 4, 0, Math.PI * 2, false);
  pen.fill();
  pen.stroke();
}

function polygon(pen: Pen, [first, ...corners]: readonly (readonly [number, number])[]): void {
  if (!first) return;
  pen.moveTo(first[0], first[1]);
  for (const [x, y] of corners) pen.lineTo(x, y);
  pen.closePath();
}

/** Marks A and B, and the place under the hand. */
export function drawCursors(
  pen: Pen,
  { frame, ink }: TraceLook,
  { a, b, held, underM }: Readonly<{ a: number | null; b: number | null; held: "a" | "b"; underM: number | null }>,
): void {
  if (underM !== null) {
    pen.strokeStyle = ink.hair;
    pen.lineWidth = 1;
    const x = Math.round(fiberX(frame, underM)) + 0.5;
    line(pen, [x, 0], [x, frame.heightPx - margins.bottomPx]);
  }
  for (const [name, atM] of [
    ["a", a],
    ["b", b],
  ] as const) {
    if (atM === null) continue;
    const x = Math.round(fiberX(frame, atM)) + 0.5;
    pen.strokeStyle = ink.accent;
    pen.lineWidth = name === held ? 2 : 1;
    line(pen, [x, 0], [x, frame.heightPx - margins.bottomPx]);
    pen.fillStyle = ink.accent;
    pen.beginPath();
    pen.rect(x - 8, frame.heightPx - margins.bottomPx - 16, 16, 16);
    pen.fill();
    pen.fillStyle = ink.ground;
    pen.font = lettering(11 * ink.letterFrac, 600);
    pen.textAlign = "center";
    pen.textBaseline = "middle";
    pen.fillText(name.toUpperCase(), x, frame.heightPx - margins.bottomPx - 8);
  }
}

/** Levels at the left, distances below. */
export function drawScales(pen: Pen, { frame, ink, units }: TraceLook): void {
  const { leftPx, bottomPx } = margins;
  const unitM = units === "us" ? metresPerFoot : 1;
  const footY = frame.heightPx - bottomPx;
  pen.fillStyle = ink.ground;
  pen.fillRect(0, 0, leftPx, frame.heightPx);
  pen.fillRect(0, footY, frame.widthPx, bottomPx);
  pen.font = lettering(11 * ink.letterFrac, 400);
  pen.fillStyle = ink.soft;
  pen.strokeStyle = ink.hair;
  pen.lineWidth = 1;
  pen.textBaseline = "middle";
  pen.textAlign = "right";
  const up = stepFor(28 / frame.pxPerDb);
  for (let db = Math.ceil(levelAtY(frame, footY - 8) / up) * up; levelY(frame, db) > 22; db += up) {
    const y = levelY(frame, db);
    pen.fillText(fixedText(db, up < 1 ? (up < 0.1 ? 2 : 1) : 0), leftPx - 8, y);
    line(pen, [leftPx - 4, y], [leftPx, y]);
  }
  pen.fillText("dB", leftPx - 8, 10);
  pen.textAlign = "center";
  const along = unitM * stepFor(84 / (frame.pxPerM * unitM));
  for (let m = Math.ceil(fiberAtX(frame, leftPx) / along) * along; fiberX(frame, m) < frame.widthPx - 30; m += along) {
    const x = fiberX(frame, m);
    pen.fillText(fixedText(m / unitM, along / unitM < 1 ? 1 : 0), x, footY + 15);
    line(pen, [x, footY], [x, footY + 5]);
  }
  pen.textAlign = "right";
  pen.fillText(units === "us" ? "ft" : "m", frame.widthPx - 6, footY + 15);
  line(pen, [leftPx, 0], [leftPx, footY]);
  line(pen, [leftPx, footY], [frame.widthPx, footY]);
}

/** The next of 1, 2 and 5 at any power of ten. */
function stepFor(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5].map((one) => one * power).find((one) => one >= least) ?? 10 * power;
}

function line(pen: Pen, [x, y]: readonly [number, number], [toX, toY]: readonly [number, number]): void {
  pen.beginPath();
  pen.moveTo(x, y);
  pen.lineTo(toX, toY);
  pen.stroke();
}

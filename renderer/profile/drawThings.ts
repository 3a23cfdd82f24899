import { poleTopM } from "../../core/plant/profile.ts";
import { elevationOn } from "../../core/plant/profileSpan.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import type { UnitSystem } from "../../core/units/unitSystem.ts";
import { surfaceWords } from "../canvas/crossingMarks.ts";
import { lettering } from "../canvas/ink.ts";
import type { Pen } from "../canvas/paint.ts";
import { attachmentWords } from "../panels/words.ts";
import { type ProfilePicture, placed, shownSteps } from "./drawLine.ts";
import { elevationY, stationX } from "./frame.ts";

/** Least length of a span for what lies under it to be named, px. */
const namedSpanPx = 110;

/** Least distance between poles for attachments to be named, px. */
const namedPolePx = 150;

/** Poles to their height, feet tagged below the ground; attachments of every owner, ours as filled dots. */
export function drawProfilePoles(pen: Pen, { profile, frame, ink }: ProfilePicture, units: UnitSystem): void {
  let taggedToX = Number.NEGATIVE_INFINITY;
  for (const [index, pole] of profile.poles.entries()) {
    const x = stationX(frame, pole.stationM);
    if (x < -60 || x > frame.widthPx + 20) continue;
    const [footY, topY] = [elevationY(frame, pole.footM), elevationY(frame, poleTopM(pole))];
    pen.strokeStyle = ink.ink;
    pen.lineWidth = 3;
    pen.setLineDash(pole.aboveGroundM === null ? [4, 3] : []);
    pen.beginPath();
    pen.moveTo(x, footY);
    pen.lineTo(x, topY);
    pen.stroke();
    pen.setLineDash([]);
    pen.font = lettering(12 * ink.letterFrac, 600);
    const widthPx = pen.measureText(pole.tag).width;
    if (x - widthPx / 2 > taggedToX) {
      pen.fillStyle = ink.ink;
      pen.textAlign = "center";
      pen.textBaseline = "top";
      pen.fillText(pole.tag, x, footY + 5);
      taggedToX = x + widthPx / 2 + 8;
    }
    const beside = profile.poles[index + 1] ?? profile.poles[index - 1];
    const roomPx = Math.abs(stationX(frame, beside?.stationM ?? 0) - x);
    drawAttachments(pen, { x, footM: pole.footM, roomPx }, pole.attachments, { frame, ink, units });
  }
}

type At = { readonly x: number; readonly footM: number /** To the next pole, px. */; readonly roomPx: number };
type With = Pick<ProfilePicture, "frame" | "ink"> & { readonly units: UnitSystem };

function drawAttachments(
  pen: Pen,
  { x, footM, roomPx }: At,
  attachments: ProfilePicture["profile"]["poles"][number]["attachments"],
  { frame, ink, units }: With,
): void {
  pen.lineWidth = 1.25;
  const radiusPx = roomPx > 60 ? 3.5 : 2.25;
  let namedFromY = Number.POSITIVE_INFINITY;
  for (const { kind, heightM } of attachments) {
    const y = elevationY(frame, footM + heightM);
    pen.beginPath();
    pen.arc(x, y, radiusPx, 0, Math.PI * 2);
    pen.fillStyle = kind === "ourStrand" ? ink.ink : ink.ground;
    pen.fill();
    pen.strokeStyle = ink.ink;
    pen.stroke();
    const linePx = 13 * ink.letterFrac;
    if (roomPx < namedPolePx || y > namedFromY - linePx) continue;
    const text = `${attachmentWords[kind]} ${formatLength(heightM, units, "height")}`;
    plate(pen, text, [x, y], { frame, ink, units }, kind === "ourStrand");
    namedFromY = y;
  }
}

/** Crossings as a thick bar at their surface with the height they ask for above it; structures as boxes. */
export function drawBelow(pen: Pen, picture: ProfilePicture): void {
  const { frame, ink } = picture;
  for (const step of shownSteps(picture)) {
    const isNamed = step.span.lengthM * frame.pxPerM > namedSpanPx;
    for (const { row, topM, limitM } of step.span.crossings) {
      if (topM === null) continue;
      const [a, y] = placed(frame, step, row.offsetM - row.widthM / 2, topM);
      const [b] = placed(frame, step, row.offsetM + row.widthM / 2, topM);
      const [left, right] = [Math.min(a, b), Math.max(a, b, Math.min(a, b) + 3)];
      pen.fillStyle = ink.ink;
      pen.fillRect(left, y - 2, right - left, 5);
      if (limitM !== null) drawLimit(pen, picture, [left, right], [y, elevationY(frame, topM + limitM)]);
      if (isNamed) words(pen, picture, surfaceWords[row.surface], [(left + right) / 2, y + 19 * ink.letterFrac]);
    }
    for (const { row, topM, limitM } of step.span.structures) {
      if (topM === null) continue;
      const [a, y] = placed(frame, step, row.offsetM - row.lengthM / 2, topM);
      const [b, foot] = placed(frame, step, row.offsetM + row.lengthM / 2, topM - row.heightM);
      const [left, right] = [Math.min(a, b), Math.max(a, b)];
      pen.strokeStyle = ink.ink;
      pen.lineWidth = 1;
      pen.setLineDash(row.besideM > 0 ? [4, 3] : []);
      pen.fillStyle = row.besideM > 0 ? ink.ground : ink.hair;
      pen.fillRect(left, y, right - left, foot - y);
      pen.strokeRect(left, y, right - left, foot - y);
      pen.setLineDash([]);
      if (limitM !== null) drawLimit(pen, picture, [left, right], [y, elevationY(frame, topM + limitM)]);
      if (isNamed) words(pen, picture, row.name, [(left + right) / 2, (y + foot) / 2]);
    }
  }
}

/** Height a surface asks for: a dotted line over its width, held up at both ends. */
function drawLimit(
  pen: Pen,
  { ink }: ProfilePicture,
  [left, right]: readonly [number, number],
  [surfaceY, limitY]: readonly [number, number],
): void {
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 1;
  pen.setLineDash([1, 3]);
  pen.beginPath();
  pen.moveTo(left, surfaceY);
  pen.lineTo(left, limitY);
  pen.moveTo(right, surfaceY);
  pen.lineTo(right, limitY);
  pen.stroke();
  pen.setLineDash([]);
  pen.lineWidth = 1.5;
  pen.beginPath();
  pen.moveTo(left - 3, limitY);
  pen.lineTo(right + 3, limitY);
  pen.stroke();
}

/** What hangs under the strand: terminals as bars, coils as rings, closures as bars with a stroke. */
export function drawHungThings(pen: Pen, picture: ProfilePicture): void {
  const { frame, ink } = picture;
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1.25;
  for (const step of shownSteps(picture)) {
    const { line, hung } = step.span;
    if (!line || frame.pxPerM * step.span.lengthM < 24) continue;
    for (const one of hung) {
      const [x, y] = hungPoint(picture, step, one.offsetM);
      pen.fillStyle = ink.ground;
      pen.beginPath();
      if (one.table === "slack") pen.arc(x, y + 5, 4, 0, Math.PI * 2);
      else {
        const widthPx = Math.max(10, one.halfM * 2 * frame.pxPerM);
        pen.roundRect(x - widthPx / 2, y + 4, widthPx, 7, 2);
        pen.moveTo(x - widthPx / 4, y);
        pen.lineTo(x - widthPx / 4, y + 4);
        pen.moveTo(x + widthPx / 4, y);
        pen.lineTo(x + widthPx / 4, y + 4);
      }
      if (one.table !== "slack") pen.fill();
      if (one.table === "closure") {
        pen.moveTo(x - 6, y + 14);
        pen.lineTo(x + 6, y + 1);
      }
      pen.stroke();
    }
  }
}

/** Pixel of the strand where something hangs. */
export function hungPoint(
  { frame }: Pick<ProfilePicture, "frame">,
  step: ReturnType<typeof shownSteps>[number],
  offsetM: number,
): readonly [number, number] {
  return placed(frame, step, offsetM, elevationOn(step.span, step.span.line?.stringing ?? [], offsetM));
}

function words(pen: Pen, { ink }: ProfilePicture, text: string, [x, y]: readonly [number, number]): void {
  pen.font = lettering(11 * ink.letterFrac, 400);
  pen.fillStyle = ink.ink;
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.fillText(text, x, y);
}

/** A label beside its attachment, on the side where the paper has room. */
function plate(pen: Pen, text: string, [x, y]: readonly [number, number], { frame, ink }: With, isOurs: boolean): void {
  pen.font = lettering(11 * ink.letterFrac, isOurs ? 600 : 400);
  const widthPx = pen.measureText(text).width;
  const leftPx = x + 8 + widthPx < frame.widthPx ? x + 8 : x - 8 - widthPx;
  pen.textAlign = "left";
  pen.textBaseline = "middle";
  pen.fillStyle = ink.ground;
  pen.fillRect(leftPx - 2, y - 7 * ink.letterFrac, widthPx + 4, 14 * ink.letterFrac);
  pen.fillStyle = isOurs ? ink.ink : ink.soft;
  pen.fillText(text, leftPx, y);
}

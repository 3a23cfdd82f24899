import { type Profile, type ProfileStep, stepStationM } from "../../core/plant/profile.ts";
import { type ProfileCase, type ProfileWire, profileCases } from "../../core/plant/profileSpan.ts";
import { type Ink, lettering } from "../canvas/ink.ts";
import type { Pen } from "../canvas/paint.ts";
import { elevationY, type Frame, stationAt, stationX } from "./frame.ts";
import { profileWords } from "./words.ts";

/** What a profile is drawn from. */
export type ProfilePicture = { readonly profile: Profile; readonly frame: Frame; readonly ink: Ink };

/** Dashes of each case of our line; strung is the full line. */
export const caseDashes: Readonly<Record<ProfileCase, readonly number[]>> = {
  cold: [1, 4],
  stringing: [],
  hot: [2, 2],
  iced: [7, 3],
};

const wireDashes: Readonly<Record<ProfileWire["kind"], readonly number[]>> = {
  primary: [10, 3],
  secondary: [8, 2, 2, 2],
  neutral: [4, 3],
  communication: [2, 3],
  supplyFiber: [4, 2, 2, 2],
  ourStrand: [],
  equipment: [],
  streetLight: [],
  dripLoop: [],
  riser: [],
};

/** Spans narrower than this on the page are drawn without dashes, px. */
const leastDashedPx = 12;

/** Points of a curve stand at least so far apart along the page, px. */
const leastApartPx = 1.5;

/** Steps of the path that are in sight. */
export function shownSteps({ profile, frame }: ProfilePicture): readonly ProfileStep[] {
  const [fromM, toM] = [stationAt(frame, 0), stationAt(frame, frame.widthPx)];
  return profile.steps.filter((step) => step.startM <= toM && step.startM + step.span.lengthM >= fromM);
}

/** The ground, hatched where measured, and a dashed guess from foot to foot where not. */
export function drawGroundLine(pen: Pen, picture: ProfilePicture): void {
  const { profile, frame, ink } = picture;
  const feet = new Map(profile.poles.map((pole) => [pole.poleId, pole.footM]));
  for (const step of shownSteps(picture)) {
    const { ground } = step.span;
    const points = ground
      ? ground.map(({ offsetM, groundM }) => placed(frame, step, offsetM, groundM))
      : [
          [stationX(frame, step.startM), elevationY(frame, feet.get(step.inPoleId) ?? 0)] as const,
          [stationX(frame, step.startM + step.span.lengthM), elevationY(frame, feet.get(step.outPoleId) ?? 0)] as const,
        ];
    const inOrder = step.reversed && ground ? points.toReversed() : points;
    const [first, last] = [inOrder[0], inOrder.at(-1)];
    if (!first || !last) continue;
    if (ground) {
      pen.beginPath();
      pen.moveTo(first[0], frame.heightPx);
      for (const [x, y] of inOrder) pen.lineTo(x, y);
      pen.lineTo(last[0], frame.heightPx);
      pen.closePath();
      pen.fillStyle = ink.wash;
      pen.fill();
    }
    pen.strokeStyle = ink.ink;
    pen.lineWidth = 1.25;
    pen.setLineDash(ground ? [] : [3, 5]);
    strokeAll(pen, [inOrder]);
    if (!ground) writeUnknown(pen, picture, first, last);
  }
  pen.setLineDash([]);
}

/** Wires of other parties as dashed hairlines, a dash a kind. */
export function drawOtherWires(pen: Pen, picture: ProfilePicture): void {
  const { frame, ink } = picture;
  const steps = shownSteps(picture);
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 1;
  for (const [kind, dashes] of Object.entries(wireDashes)) {
    const curves = steps.flatMap((step) =>
      step.span.wires.filter((wire) => wire.kind === kind).map((wire) => curve(frame, step, wire.elevationsM)),
    );
    pen.setLineDash(isRoomy(picture, steps) ? [...dashes] : []);
    strokeAll(pen, curves);
  }
  pen.setLineDash([]);
}

/** Our line: the band between its highest and its lowest case, each case by its dash, strung as the full line. */
export function drawOurLine(pen: Pen, picture: ProfilePicture): void {
  const { frame, ink } = picture;
  const steps = shownSteps(picture);
  const lines = steps.flatMap((step) => (step.span.line ? [{ step, line: step.span.line }] : []));
  pen.beginPath();
  for (const { step, line } of lines) {
    const at = (pick: (...values: number[]) => number) =>
      step.span.offsetsM.map((_, i) => pick(...profileCases.map((one) => line[one][i] ?? 0)));
    const upper = curve(frame, step, at(Math.max));
    const lower = curve(frame, step, at(Math.min));
    trace(pen, [...upper, ...lower.toReversed()]);
    pen.closePath();
  }
  pen.fillStyle = ink.hair;
  pen.fill();
  pen.strokeStyle = ink.ink;
  for (const one of profileCases) {
    pen.lineWidth = one === "stringing" ? 2 : 1;
    pen.setLineDash(isRoomy(picture, steps) ? [...caseDashes[one]] : []);
    strokeAll(
      pen,
      lines.map(({ step, line }) => curve(frame, step, line[one])),
    );
  }
  pen.setLineDash([]);
}

type Points = readonly (readonly [number, number])[];

/** Whether spans are wide enough on the page to show a dash: one begins anew at every pole. */
function isRoomy({ frame }: ProfilePicture, steps: readonly ProfileStep[]): boolean {
  return frame.widthPx / Math.max(1, steps.length) >= leastDashedPx;
}

/** A curve of a span in pixels, with no more points than can be told apart. */
function curve(frame: Frame, step: ProfileStep, elevationsM: readonly number[]): Points {
  const { offsetsM, lengthM } = step.span;
  const widthPx = Math.abs(stationX(frame, step.startM + lengthM) - stationX(frame, step.startM));
  const stride = Math.max(1, Math.ceil((offsetsM.length * leastApartPx) / widthPx));
  const last = offsetsM.length - 1;
  return offsetsM.flatMap((offsetM, i) =>
    i === last || i % stride === 0 ? [placed(frame, step, offsetM, elevationsM[i] ?? 0)] : [],
  );
}

/** Pixel of a place in a span. */
export function placed(
  frame: Frame,
  step: ProfileStep,
  offsetM: number,
  elevationM: number,
): readonly [number, number] {
  return [stationX(frame, stepStationM(step, offsetM)), elevationY(frame, elevationM)];
}

function strokeAll(pen: Pen, curves: readonly Points[]): void {
  pen.beginPath();
  for (const points of curves) trace(pen, points);
  pen.stroke();
}

function trace(pen: Pen, points: Points): void {
  for (const [index, [x, y]] of points.entries())
    if (index === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
}

/** Says over a dashed ground that it is a guess, where there is room. */
function writeUnknown(
  pen: Pen,
  { ink }: ProfilePicture,
  [x, y]: readonly [number, number],
  [toX, toY]: readonly [number, number],
): void {
  pen.font = lettering(11 * ink.letterFrac, 400);
  if (pen.measureText(profileWords.groundUnknown).width > toX - x - 12) return;
  pen.fillStyle = ink.soft;
  pen.textAlign = "center";
  pen.textBaseline = "bottom";
  pen.fillText(profileWords.groundUnknown, (x + toX) / 2, Math.min(y, toY) - 6);
}

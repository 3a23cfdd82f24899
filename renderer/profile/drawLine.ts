import { furtherCases } from "../../core/model/loadRows.ts";
import { type ProfileStep, stepStationM } from "../../core/plant/profile.ts";
import { type ProfileCase, type ProfileWire, profileCases } from "../../core/plant/profileSpan.ts";
import type { Pen } from "../canvas/paint.ts";
import { elevationY, type Frame, stationX } from "./frame.ts";
import type { ProfileLook, ProfileScene } from "./profileScene.ts";

/** Dashes of each case of our line; strung is the full line. */
export const caseDashes: Readonly<Record<ProfileCase, readonly number[]>> = {
  cold: [1, 4],
  stringing: [],
  hot: [2, 2],
  iced: [7, 3],
  extremeWind: [10, 3, 2, 3],
  extremeIce: [10, 3, 2, 3, 2, 3],
  worker: [1, 2],
};

const wireDashes: Readonly<Record<ProfileWire["kind"], readonly number[]>> = {
  primary: [10, 3],
  secondary: [8, 2, 2, 2],
  neutral: [4, 3],
  communication: [7, 3, 1, 3, 1, 3],
  supplyFiber: [4, 2, 2, 2],
  ourStrand: [],
  equipment: [],
  streetLight: [],
  dripLoop: [],
  riser: [],
};

/** Points of a curve stand at least so far apart along the page, px. */
const leastApartPx = 1.5;

/** Wires of other parties as dashed hairlines, a dash a kind. */
export function drawOtherWires(pen: Pen, { frame, ink }: ProfileLook, { steps, isRoomy }: ProfileScene): void {
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 1;
  for (const [kind, dashes] of Object.entries(wireDashes)) {
    pen.setLineDash(isRoomy ? [...dashes] : []);
    pen.beginPath();
    for (const step of steps)
      for (const wire of step.span.wires) if (wire.kind === kind) trace(pen, frame, step, wire.elevationsM);
    pen.stroke();
  }
  pen.setLineDash([]);
}

/**
 * Our line: the band between its highest and its lowest case of clearance, each case by its dash, strung as the full line. The further
 * cases of strength, against which no clearance is held, are dashes alone. Where spans are narrow the band tells the cases.
 */
export function drawOurLine(pen: Pen, { frame, ink }: ProfileLook, { steps, isRoomy }: ProfileScene): void {
  pen.beginPath();
  // a fill closes its curves by itself; closing each here would measure the whole path anew every time
  for (const step of steps) {
    const { band } = step.span;
    if (!band) continue;
    trace(pen, frame, step, band.upperM);
    trace(pen, frame, step, band.lowerM, "back");
  }
  pen.fillStyle = ink.hair;
  pen.fill();
  pen.strokeStyle = ink.ink;
  for (const one of isRoomy ? [...profileCases, ...furtherCases] : (["stringing"] as const)) {
    pen.lineWidth = one === "stringing" && isRoomy ? 2 : 1;
    pen.setLineDash([...caseDashes[one]]);
    pen.beginPath();
    for (const step of steps) {
      const elevationsM = step.span.line?.[one];
      if (elevationsM) trace(pen, frame, step, elevationsM);
    }
    pen.stroke();
  }
  pen.setLineDash([]);
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

/** Adds a curve of a span to the path, with no more points than can be told apart; backwards it goes on from where the path is. */
function trace(
  pen: Pen,
  frame: Frame,
  step: ProfileStep,
  elevationsM: readonly number[],
  way: "forth" | "back" = "forth",
): void {
  const { offsetsM, lengthM } = step.span;
  const last = offsetsM.length - 1;
  const apart = Math.ceil((offsetsM.length * leastApartPx) / (lengthM * frame.pxPerM));
  const stride = Math.max(1, Math.min(apart, Math.ceil(last / 2)));
  for (let told = 0; ; told = Math.min(last, told + stride)) {
    const index = way === "forth" ? told : last - told;
    const x = stationX(frame, stepStationM(step, offsetsM[index] ?? 0));
    const y = elevationY(frame, elevationsM[index] ?? 0);
    if (told === 0 && way === "forth") pen.moveTo(x, y);
    else pen.lineTo(x, y);
    if (told === last) return;
  }
}

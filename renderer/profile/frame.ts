import { type Profile, poleTopM } from "../../core/plant/profile.ts";

/** Which part of a profile is shown, at a scale along and one up. */
export type Frame = {
  /** Station at the left edge, m. */
  readonly leftM: number;
  /** Elevation at the lower edge, m. */
  readonly baseM: number;
  readonly pxPerM: number;
  readonly upPxPerM: number;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** Room for the scales at the left and below, and for marks above, px. */
const margins = { leftPx: 84, rightPx: 40, topPx: 44, bottomPx: 58 } as const;

/** Height of the scale of stations at the lower edge, px. */
export const stationScalePx = 20;

const [leastPxPerM, mostPxPerM] = [0.01, 60];
const [leastUpPxPerM, mostUpPxPerM] = [0.5, 200];

/** Pixel column of a station. */
export function stationX(frame: Frame, stationM: number): number {
  return (stationM - frame.leftM) * frame.pxPerM;
}

/** Pixel row of an elevation, down from the top. */
export function elevationY(frame: Frame, elevationM: number): number {
  return frame.heightPx - (elevationM - frame.baseM) * frame.upPxPerM;
}

/** Station under a pixel column, m. */
export function stationAt(frame: Frame, xPx: number): number {
  return frame.leftM + xPx / frame.pxPerM;
}

/** Elevation under a pixel row, m. */
export function elevationAt(frame: Frame, yPx: number): number {
  return frame.baseM + (frame.heightPx - yPx) / frame.upPxPerM;
}

/** Zooms so that what is under a pixel stays under it. */
export function zoomFrame(frame: Frame, [xPx, yPx]: readonly [number, number], along: number, up: number): Frame {
  const pxPerM = Math.min(mostPxPerM, Math.max(leastPxPerM, frame.pxPerM * along));
  const upPxPerM = Math.min(mostUpPxPerM, Math.max(leastUpPxPerM, frame.upPxPerM * up));
  const [stationM, elevationM] = [stationAt(frame, xPx), elevationAt(frame, yPx)];
  return {
    ...frame,
    pxPerM,
    upPxPerM,
    leftM: stationM - xPx / pxPerM,
    baseM: elevationM - (frame.heightPx - yPx) / upPxPerM,
  };
}

/** Moves the profile with the hand. */
export function panFrame(frame: Frame, dxPx: number, dyPx: number): Frame {
  return { ...frame, leftM: frame.leftM - dxPx / frame.pxPerM, baseM: frame.baseM + dyPx / frame.upPxPerM };
}

/** Shows a stretch of a profile whole, from the lowest ground to the highest thing in it. */
export function fitFrame(frame: Frame, profile: Profile, fromM = 0, toM = profile.lengthM): Frame {
  const within = profile.poles.filter((pole) => pole.stationM >= fromM - 1 && pole.stationM <= toM + 1);
  const tops = within.map(poleTopM);
  const grounds = profile.steps
    .filter((step) => step.startM < toM && step.startM + step.span.lengthM > fromM)
    .flatMap((step) => step.span.ground?.map((point) => point.groundM) ?? []);
  const lowM = Math.min(...within.map((pole) => pole.footM), ...grounds);
  const highM = Math.max(lowM + 1, ...tops);
  const { leftPx, rightPx, topPx, bottomPx } = margins;
  const pxPerM = Math.min(mostPxPerM, Math.max(40, frame.widthPx - leftPx - rightPx) / Math.max(toM - fromM, 1));
  const upPxPerM = Math.min(mostUpPxPerM, Math.max(40, frame.heightPx - topPx - bottomPx) / (highM - lowM));
  if (within.length === 0) return frame;
  return { ...frame, pxPerM, upPxPerM, leftM: fromM - leftPx / pxPerM, baseM: lowM - bottomPx / upPxPerM };
}

/** The frame with a station inside it, moved no more than it must be. */
export function frameWith(frame: Frame, stationM: number): Frame {
  const x = stationX(frame, stationM);
  const isShown = x > margins.leftPx && x < frame.widthPx - margins.rightPx;
  return isShown ? frame : { ...frame, leftM: stationM - frame.widthPx / 2 / frame.pxPerM };
}

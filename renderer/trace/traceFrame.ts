/** Which part of the traces is shown: fiber from the hub along, level up. */
export type TraceFrame = {
  /** Fiber from the hub at the left edge, m. */
  readonly leftM: number;
  /** Level at the upper edge, dB. */
  readonly topDb: number;
  readonly pxPerM: number;
  readonly pxPerDb: number;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** What there is to be shown. */
export type TraceExtent = {
  readonly fromM: number;
  readonly toM: number;
  readonly topDb: number;
  readonly bottomDb: number;
};

/** Room for the scales at the left and below, and for names above, px. */
export const margins = { leftPx: 46, rightPx: 24, topPx: 58, bottomPx: 26 } as const;

const [leastPxPerM, mostPxPerM] = [0.0005, 200];
const [leastPxPerDb, mostPxPerDb] = [0.5, 4000];

export function fiberX(frame: TraceFrame, fiberM: number): number {
  return (fiberM - frame.leftM) * frame.pxPerM;
}

export function levelY(frame: TraceFrame, levelDb: number): number {
  return (frame.topDb - levelDb) * frame.pxPerDb;
}

export function fiberAtX(frame: TraceFrame, xPx: number): number {
  return frame.leftM + xPx / frame.pxPerM;
}

export function levelAtY(frame: TraceFrame, yPx: number): number {
  return frame.topDb - yPx / frame.pxPerDb;
}

/** Zooms so that what is under a pixel stays under it. */
export function zoomTrace(
  frame: TraceFrame,
  [xPx, yPx]: readonly [number, number],
  along: number,
  up: number,
): TraceFrame {
  const pxPerM = bounded(frame.pxPerM * along, leastPxPerM, mostPxPerM);
  const pxPerDb = bounded(frame.pxPerDb * up, leastPxPerDb, mostPxPerDb);
  const [fiberM, levelDb] = [fiberAtX(frame, xPx), levelAtY(frame, yPx)];
  return { ...frame, pxPerM, pxPerDb, leftM: fiberM - xPx / pxPerM, topDb: levelDb + yPx / pxPerDb };
}

/** Moves the traces with the hand. */
export function panTrace(frame: TraceFrame, dxPx: number, dyPx: number): TraceFrame {
  return { ...frame, leftM: frame.leftM - dxPx / frame.pxPerM, topDb: frame.topDb + dyPx / frame.pxPerDb };
}

/** Shows everything there is. */
export function fitTrace(frame: TraceFrame, { fromM, toM, topDb, bottomDb }: TraceExtent): TraceFrame {
  const { leftPx, rightPx, topPx, bottomPx } = margins;
  const pxPerM = bounded(
    Math.max(40, frame.widthPx - leftPx - rightPx) / Math.max(1, toM - fromM),
    leastPxPerM,
    mostPxPerM,
  );
  const pxPerDb = bounded(
    Math.max(40, frame.heightPx - topPx - bottomPx) / Math.max(1, topDb - bottomDb),
    leastPxPerDb,
    mostPxPerDb,
  );
  return { ...frame, pxPerM, pxPerDb, leftM: fromM - leftPx / pxPerM, topDb: topDb + topPx / pxPerDb };
}

/** The frame with a place inside it, moved no more than it must be. */
export function traceFrameWith(frame: TraceFrame, fiberM: number): TraceFrame {
  const x = fiberX(frame, fiberM);
  const isShown = x > margins.leftPx && x < frame.widthPx - margins.rightPx;
  return isShown ? frame : { ...frame, leftM: fiberM - frame.widthPx / 2 / frame.pxPerM };
}

function bounded(figure: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, figure));
}

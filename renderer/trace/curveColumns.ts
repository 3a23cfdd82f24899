import { fiberX, type TraceFrame } from "./traceFrame.ts";

/** The points of a curve where they lie along the fiber: each `stepM` on from the one before, under 0 for one shot from the far end. */
export type LaidCurve = {
  readonly levelsDb: Float64Array;
  /** Fiber from the hub at the first point, m. */
  readonly firstM: number;
  readonly stepM: number;
};

/** A stretch of a curve one pixel wide: its highest and lowest level, and where it comes in and goes out, dB. */
export type CurveColumn = {
  readonly x: number;
  readonly highDb: number;
  readonly lowDb: number;
  readonly firstDb: number;
  readonly lastDb: number;
};

/**
 * The part of a curve that a frame shows, a column a pixel at most, from left to right. No peak is lost, however many points share a pixel.
 */
export function curveColumns({ levelsDb, firstM, stepM }: LaidCurve, frame: TraceFrame): readonly CurveColumn[] {
  const columns: { x: number; highDb: number; lowDb: number; firstDb: number; lastDb: number }[] = [];
  const edges = [frame.leftM, frame.leftM + frame.widthPx / frame.pxPerM].map((atM) => (atM - firstM) / stepM);
  const from = Math.max(0, Math.floor(Math.min(...edges)) - 1);
  const to = Math.min(levelsDb.length - 1, Math.ceil(Math.max(...edges)) + 1);
  const count = to - from + 1;
  let column = columns[0];
  for (let step = 0; step < count; step += 1) {
    const index = stepM > 0 ? from + step : to - step;
    const levelDb = levelsDb[index] ?? 0;
    const x = Math.round(fiberX(frame, firstM + index * stepM));
    if (column?.x === x) {
      if (levelDb > column.highDb) column.highDb = levelDb;
      if (levelDb < column.lowDb) column.lowDb = levelDb;
      column.lastDb = levelDb;
      continue;
    }
    column = { x, highDb: levelDb, lowDb: levelDb, firstDb: levelDb, lastDb: levelDb };
    columns.push(column);
  }
  return columns;
}

/** Level of a curve at a place, dB; null beside it. */
export function levelAt({ levelsDb, firstM, stepM }: LaidCurve, fiberM: number): number | null {
  return levelsDb[Math.round((fiberM - firstM) / stepM)] ?? null;
}

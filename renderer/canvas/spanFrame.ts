/**
 * Which way is along and which is below on a span as drawn: unit vectors in pixels, y down. Everything hung in one span uses
 * one frame, so that cables, coils and terminals stay on one side of the strand and lettering is never upside down.
 */
export type SpanFrame = {
  readonly alongX: number;
  readonly alongY: number;
  readonly belowX: number;
  readonly belowY: number;
};

// A line straight up the sheet hangs its things to the right; leaning the choice a little keeps a winding road on one side.
const leaning = 0.35;

/** The frame of a span that runs by so many metres east and north; a span without length hangs straight down. */
export function spanFrame(eastM: number, northM: number): SpanFrame {
  const lengthM = Math.hypot(eastM, northM);
  if (!(lengthM > 0)) return { alongX: 1, alongY: 0, belowX: 0, belowY: 1 };
  const x = eastM / lengthM;
  const y = -northM / lengthM;
  const isBelow = -y * leaning + x >= 0;
  const belowX = isBelow ? -y : y;
  const belowY = isBelow ? x : -x;
  return { alongX: belowY, alongY: -belowX, belowX, belowY };
}

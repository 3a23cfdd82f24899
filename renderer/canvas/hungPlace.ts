import type { CoilMark, PortTick, TerminalMark } from "./hungMarks.ts";
import { cableGapPx, levelOf, ringPx } from "./level.ts";
import { screenX, screenY, type Viewport, zoomOf } from "./viewport.ts";

/** A thing hung under the strand as it stands on screen: where its hangers leave the strand, and its turned rectangle. */
export type HungPlace = {
  readonly strandX: number;
  readonly strandY: number;
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Turn of the rectangle, rad, clockwise on screen. */
  readonly turnRad: number;
};

/** Distance between two port ticks along a rank, px. */
export function tickPitchPx(view: Viewport): number {
  return Math.min(8, Math.max(3.8, 2.4 + zoomOf(view) * 1.5));
}

/**
 * A terminal on screen. Its hangers leave the strand at the true place; where the scale is too small for the bar to clear
 * the pole's ring, the bar alone is drawn aside.
 */
export function terminalPlacePx(
  mark: HungThing & Pick<TerminalMark, "rankCount" | "perRankCount">,
  view: Viewport,
): HungPlace {
  const level = levelOf(view);
  const pitch = tickPitchPx(view);
  const widthPx = level === "labels" ? (mark.perRankCount + 1) * pitch : level === "symbols" ? 11 : 6;
  const heightPx = level === "labels" ? mark.rankCount * pitch * 1.45 + pitch * 0.75 : level === "symbols" ? 5 : 2.5;
  const below = cableGapPx(level, 1) + (level === "labels" ? 5 : 1) + heightPx / 2;
  return hungAt(mark, view, widthPx, heightPx, below, 0);
}

/** A coil on screen: a terminal's own coil beside its bar, a storage coil at its own place. */
export function coilPlacePx(mark: CoilMark, view: Viewport, terminal: TerminalMark | undefined): HungPlace {
  const widthPx = Math.min(17, 8 + zoomOf(view) * 2.5);
  const below = cableGapPx(levelOf(view), 1) + 2 + widthPx / 2;
  if (!terminal || terminal.spanId !== mark.spanId) return hungAt(mark, view, widthPx, widthPx, below, 0);
  const bar = terminalPlacePx(terminal, view);
  return hungAt(terminal, view, bar.widthPx, widthPx, below, bar.widthPx / 2 + widthPx / 2 + 4, widthPx);
}

/** Middle of a port's tick on screen. */
export function tickPoint(
  place: HungPlace,
  mark: TerminalMark,
  tick: PortTick,
  pitchPx: number,
): readonly [number, number] {
  const along = (tick.along - (mark.perRankCount - 1) / 2) * pitchPx;
  const across = (tick.rank - (mark.rankCount - 1) / 2) * pitchPx * 1.45;
  const cos = Math.cos(place.turnRad);
  const sin = Math.sin(place.turnRad);
  return [place.x + along * cos - across * sin, place.y + along * sin + across * cos];
}

/** Distance of a pixel from a turned rectangle, px; 0 inside. */
export function distanceToPlacePx(place: HungPlace, x: number, y: number): number {
  const cos = Math.cos(place.turnRad);
  const sin = Math.sin(place.turnRad);
  const dx = x - place.x;
  const dy = y - place.y;
  const along = Math.abs(dx * cos + dy * sin) - place.widthPx / 2;
  const across = Math.abs(dy * cos - dx * sin) - place.heightPx / 2;
  return Math.hypot(Math.max(0, along), Math.max(0, across));
}

type HungThing = Pick<TerminalMark, "eastM" | "northM" | "frame" | "away" | "fromPoleM">;

function hungAt(
  mark: HungThing,
  view: Viewport,
  clearedPx: number,
  heightPx: number,
  belowPx: number,
  asidePx: number,
  widthPx = clearedPx,
): HungPlace {
  const { frame } = mark;
  const strandX = screenX(view, mark.eastM);
  const strandY = screenY(view, mark.northM);
  const leastPx = ringPx(view) + 4 + clearedPx / 2;
  const shift = mark.away * (Math.max(0, leastPx - mark.fromPoleM * view.pxPerM) + asidePx);
  return {
    strandX,
    strandY,
    x: strandX + frame.alongX * shift + frame.belowX * belowPx,
    y: strandY + frame.alongY * shift + frame.belowY * belowPx,
    widthPx,
    heightPx,
    turnRad: Math.atan2(frame.alongY, frame.alongX),
  };
}

import { type Viewport, zoomOf } from "./viewport.ts";

/** How much is drawn: marks only from afar, then symbols, then symbols with their lettering. */
export type Level = "marks" | "symbols" | "labels";

/** The level of detail of a view. */
export function levelOf(view: Viewport): Level {
  const zoom = zoomOf(view);
  return zoom < 0.35 ? "marks" : zoom < 0.8 ? "symbols" : "labels";
}

/** Radius of a pole's ring, px. */
export function ringPx(view: Viewport): number {
  const level = levelOf(view);
  if (level === "marks") return 2;
  return level === "symbols" ? 3.6 : Math.min(7, 4 + zoomOf(view) * 0.8);
}

/** Width of a house outline, px. */
export function housePx(view: Viewport): number {
  const level = levelOf(view);
  if (level === "marks") return 3;
  return level === "symbols" ? 7 : Math.min(20, 9 + zoomOf(view) * 2.4);
}

/** Distance from the strand to the n-th cable below it, and to whatever hangs under all of them, px. */
export function cableGapPx(level: Level, position: number): number {
  return level === "labels" ? 4 + position * 3.5 : 3 + position * 2.5;
}

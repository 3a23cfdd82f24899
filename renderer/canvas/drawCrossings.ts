import type { CrossingMark } from "./crossingMarks.ts";
import type { Level } from "./level.ts";
import type { Pen, Picture } from "./paint.ts";
import { openScreenBuckets } from "./screenBuckets.ts";
import { screenX, screenY, type Viewport } from "./viewport.ts";

/** Half length of a crossing's band across the span, px. */
export function bandReachPx(level: Level): number {
  return level === "labels" ? 30 : level === "symbols" ? 15 : 7;
}

/** Width of a crossing's band along the span, px. */
export function bandWidthPx(mark: CrossingMark, view: Viewport): number {
  return Math.max(3, mark.widthM * view.pxPerM);
}

/** Crossings as bands across the span. */
export function drawCrossings(pen: Pen, { scene, view, level, ink, shown }: Picture): void {
  const reach = bandReachPx(level);
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 0.75;
  const isFree = openScreenBuckets(view);
  for (const i of scene.crossings.index.within(shown)) {
    const mark = scene.crossings.marks[i];
    if (!mark) continue;
    const half = bandWidthPx(mark, view) / 2;
    const x = screenX(view, mark.eastM);
    const y = screenY(view, mark.northM);
    if (level === "marks" && !isFree(x, y)) continue;
    pen.save();
    pen.translate(x, y);
    pen.rotate(Math.atan2(mark.frame.alongY, mark.frame.alongX));
    pen.fillStyle = ink.wash;
    pen.fillRect(-half, -reach, half * 2, reach * 2);
    pen.beginPath();
    pen.moveTo(-half, -reach);
    pen.lineTo(-half, reach);
    pen.moveTo(half, -reach);
    pen.lineTo(half, reach);
    pen.stroke();
    pen.restore();
  }
}

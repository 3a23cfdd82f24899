import type { Severity } from "../../core/rules/rule.ts";
import { type FindingMark, findingMarks } from "./findingMarks.ts";
import { type Ink, lettering } from "./ink.ts";
import type { Pen, Picture } from "./paint.ts";
import { screenX, screenY, type Viewport } from "./viewport.ts";

/** How far above its place a finding's mark stands, px. */
const findingLiftPx = 20;

/** Where a finding's mark stands on screen. */
export function findingPoint(mark: FindingMark, view: Viewport): readonly [number, number] {
  return [screenX(view, mark.eastM), screenY(view, mark.northM) - findingLiftPx];
}

/** Findings in their places on the ground. */
export function drawFindings(pen: Pen, { findings, view, ink }: Picture): void {
  for (const mark of findingMarks(findings, view.pxPerM)) {
    const [x, y] = findingPoint(mark, view);
    if (x < -20 || y < -20 || x > view.widthPx + 20 || y > view.heightPx + 20) continue;
    drawFindingMark(pen, ink, mark, [x, y]);
  }
}

/** Filled diamond for an error, open triangle for a warning, ring for a note; a count where several share a place. */
export function drawFindingMark(
  pen: Pen,
  ink: Ink,
  { severity, keys }: Pick<FindingMark, "severity" | "keys">,
  [x, y]: readonly [number, number],
): void {
  pen.font = lettering(10, 600);
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.lineWidth = 1.5;
  pen.lineJoin = "round";
  const isSolid = severity === "error";
  pen.beginPath();
  findingOutline(pen, severity, x, y, keys.length > 1 ? 9.5 : 6.5);
  pen.fillStyle = isSolid ? ink.ink : ink.ground;
  pen.fill();
  pen.strokeStyle = isSolid ? ink.ground : ink.ink;
  pen.stroke();
  if (keys.length < 2) return;
  pen.fillStyle = isSolid ? ink.ground : ink.ink;
  pen.fillText(keys.length > 99 ? "99" : String(keys.length), x, y + (severity === "warning" ? 2 : 0.5));
}

function findingOutline(pen: Pen, severity: Severity, x: number, y: number, size: number): void {
  if (severity === "note") {
    pen.arc(x, y, size * 0.85, 0, Math.PI * 2);
    return;
  }
  pen.moveTo(x, y - size);
  if (severity === "error") {
    pen.lineTo(x + size, y);
    pen.lineTo(x, y + size);
    pen.lineTo(x - size, y);
  } else {
    pen.lineTo(x + size * 1.05, y + size * 0.8);
    pen.lineTo(x - size * 1.05, y + size * 0.8);
  }
  pen.closePath();
}

import { lettering } from "./ink.ts";
import { ringPx } from "./level.ts";
import type { Pen, Picture } from "./paint.ts";
import { screenX, screenY } from "./viewport.ts";

/** On a straightened page: a stroke from each junction to its lateral's row, which begins with the junction's ring once more, dashed. */
export function drawLeaders(pen: Pen, { scene, view, level, ink }: Picture): void {
  const { straight } = scene.places;
  if (!straight) return;
  const radius = ringPx(view);
  pen.strokeStyle = ink.soft;
  pen.lineWidth = level === "marks" ? 0.75 : 1;
  pen.setLineDash([1, 3]);
  pen.beginPath();
  for (const { from, to } of straight.leaders) {
    const [x, fromY] = [screenX(view, from.eastM), screenY(view, from.northM)];
    const toY = screenY(view, to.northM);
    const gap = fromY < toY ? radius : -radius;
    pen.moveTo(x, fromY + gap);
    pen.lineTo(screenX(view, to.eastM), toY - gap);
  }
  pen.stroke();
  pen.setLineDash([2, 2]);
  pen.strokeStyle = ink.ink;
  pen.beginPath();
  for (const { to } of straight.leaders) {
    const [x, y] = [screenX(view, to.eastM), screenY(view, to.northM)];
    pen.moveTo(x + radius, y);
    pen.arc(x, y, radius, 0, Math.PI * 2);
  }
  pen.stroke();
  pen.setLineDash([]);
  drawRowNames(pen, straight.rows, { view, ink });
}

function drawRowNames(
  pen: Pen,
  rows: NonNullable<Picture["scene"]["places"]["straight"]>["rows"],
  { view, ink }: Pick<Picture, "view" | "ink">,
): void {
  pen.font = lettering(12 * ink.letterFrac, 600);
  pen.fillStyle = ink.soft;
  pen.textAlign = "right";
  pen.textBaseline = "middle";
  for (const row of rows) {
    const x = screenX(view, row.fromM) - ringPx(view) - 8;
    if (row.name !== "") pen.fillText(row.name, x, screenY(view, row.northM));
  }
}

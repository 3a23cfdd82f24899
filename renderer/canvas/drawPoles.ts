import { ringPx } from "./level.ts";
import type { Pen, Picture } from "./paint.ts";
import { openScreenBuckets } from "./screenBuckets.ts";
import { at } from "./spanMarks.ts";
import { screenX, screenY } from "./viewport.ts";

/** Poles as open rings; a joint pole has a short bar for each other party. From afar one mark a few pixels wide. */
export function drawPoles(pen: Pen, picture: Picture): void {
  const visible = picture.scene.poles.index.within(picture.shown);
  if (picture.level === "marks") drawPoleMarks(pen, picture, visible);
  else drawPoleRings(pen, picture, visible);
}

function drawPoleMarks(pen: Pen, { scene: { poles }, view, ink }: Picture, visible: readonly number[]): void {
  const isFree = openScreenBuckets(view);
  pen.fillStyle = ink.ground;
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1;
  pen.beginPath();
  for (const i of visible) {
    const x = screenX(view, at(poles.eastM, i));
    const y = screenY(view, at(poles.northM, i));
    if (!isFree(x, y)) continue;
    pen.moveTo(x + 2, y);
    pen.arc(x, y, 2, 0, Math.PI * 2);
  }
  pen.fill();
  pen.stroke();
}

function drawPoleRings(pen: Pen, { scene: { poles }, view, ink }: Picture, visible: readonly number[]): void {
  const radius = ringPx(view);
  pen.fillStyle = ink.ground;
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1.6;
  pen.beginPath();
  for (const i of visible) {
    const x = screenX(view, at(poles.eastM, i));
    const y = screenY(view, at(poles.northM, i));
    pen.moveTo(x + radius, y);
    pen.arc(x, y, radius, 0, Math.PI * 2);
  }
  pen.fill();
  pen.stroke();
  pen.beginPath();
  for (const i of visible) {
    const x = screenX(view, at(poles.eastM, i));
    const y = screenY(view, at(poles.northM, i));
    const bars = Math.min(4, at(poles.otherPartyCount, i));
    for (let bar = 0; bar < bars; bar += 1) {
      const angle = -Math.PI / 2 + (bar - (bars - 1) / 2) * 0.75;
      pen.moveTo(x + Math.cos(angle) * radius, y + Math.sin(angle) * radius);
      pen.lineTo(x + Math.cos(angle) * (radius + 4.5), y + Math.sin(angle) * (radius + 4.5));
    }
  }
  pen.stroke();
}

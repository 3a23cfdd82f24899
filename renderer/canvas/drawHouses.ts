import { dropLine } from "./dropLine.ts";
import { housePx } from "./level.ts";
import type { Pen, Picture } from "./paint.ts";
import { openScreenBuckets } from "./screenBuckets.ts";
import { screenX, screenY } from "./viewport.ts";

/** Drops as hairlines from their port's tick to the house. */
export function drawDrops(pen: Pen, picture: Picture): void {
  const { scene, level, ink, shown } = picture;
  if (level === "marks") return;
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 0.7;
  pen.beginPath();
  for (const i of scene.drops.index.within(shown)) {
    const mark = scene.drops.marks[i];
    const line = mark && dropLine(picture, mark);
    if (!line) continue;
    pen.moveTo(line[0], line[1]);
    pen.lineTo(line[2], line[3]);
  }
  pen.stroke();
}

/** Living units: one house outline for a building, a dot inside for each unit over one. */
export function drawHouses(pen: Pen, picture: Picture): void {
  const { scene, view, level, ink, shown } = picture;
  const visible = scene.houses.index.within(shown);
  if (level === "marks") {
    drawHouseMarks(pen, picture, visible);
    return;
  }
  const width = housePx(view);
  pen.strokeStyle = ink.ink;
  pen.fillStyle = ink.ground;
  pen.lineWidth = level === "labels" ? 1.1 : 0.9;
  pen.beginPath();
  for (const i of visible) {
    const house = scene.houses.marks[i];
    if (house) outline(pen, screenX(view, house.eastM), screenY(view, house.northM), width);
  }
  pen.fill();
  pen.stroke();
  if (level === "labels") drawDots(pen, picture, visible, width);
}

function drawHouseMarks(pen: Pen, { scene, view, ink }: Picture, visible: readonly number[]): void {
  const isFree = openScreenBuckets(view);
  const width = housePx(view);
  pen.strokeStyle = ink.soft;
  pen.fillStyle = ink.ground;
  pen.lineWidth = 0.9;
  pen.beginPath();
  for (const i of visible) {
    const house = scene.houses.marks[i];
    if (!house) continue;
    const x = screenX(view, house.eastM);
    const y = screenY(view, house.northM);
    if (isFree(x, y)) pen.rect(x - width / 2, y - width / 2, width, width);
  }
  pen.fill();
  pen.stroke();
}

function drawDots(pen: Pen, { scene, view, ink }: Picture, visible: readonly number[], width: number): void {
  pen.fillStyle = ink.ink;
  pen.beginPath();
  for (const i of visible) {
    const house = scene.houses.marks[i];
    if (house && house.unitIds.length > 1) {
      dots(pen, screenX(view, house.eastM), screenY(view, house.northM), house.unitIds.length - 1, width);
    }
  }
  pen.fill();
}

function outline(pen: Pen, x: number, y: number, width: number): void {
  const half = width / 2;
  pen.moveTo(x - half, y - half * 0.1);
  pen.lineTo(x, y - half * 0.95);
  pen.lineTo(x + half, y - half * 0.1);
  pen.lineTo(x + half, y + half * 0.8);
  pen.lineTo(x - half, y + half * 0.8);
  pen.closePath();
}

function dots(pen: Pen, x: number, y: number, count: number, width: number): void {
  const shownCount = Math.min(count, 6);
  const perRow = Math.min(3, shownCount);
  const step = width * 0.26;
  for (let n = 0; n < shownCount; n += 1) {
    const column = (n % perRow) - (perRow - 1) / 2;
    const row = Math.floor(n / perRow) - (Math.ceil(shownCount / perRow) - 1) / 2;
    const px = x + column * step;
    const py = y + width * 0.16 + row * step;
    pen.moveTo(px + 1.2, py);
    pen.arc(px, py, 1.2, 0, Math.PI * 2);
  }
}

import type { CoilMark, TerminalMark } from "./hungMarks.ts";
import { coilPlacePx, type HungPlace, terminalPlacePx, tickPitchPx, tickPoint } from "./hungPlace.ts";
import { cableGapPx } from "./level.ts";
import type { Pen, Picture } from "./paint.ts";
import { openScreenBuckets } from "./screenBuckets.ts";
import { screenX, screenY } from "./viewport.ts";

/** Terminals: a rounded bar under the strand on two hangers, one tick for each port as on its face. */
export function drawTerminals(pen: Pen, picture: Picture): void {
  const { scene, view, level, ink, shown } = picture;
  if (level === "marks") {
    drawTerminalMarks(pen, picture);
    return;
  }
  const pitch = tickPitchPx(view);
  for (const i of scene.terminals.index.within(shown)) {
    const mark = scene.terminals.marks[i];
    if (!mark) continue;
    const place = terminalPlacePx(mark, view);
    pen.strokeStyle = ink.ink;
    pen.lineWidth = 1;
    drawHangers(pen, mark, place);
    pen.save();
    pen.translate(place.x, place.y);
    pen.rotate(place.turnRad);
    pen.beginPath();
    pen.roundRect(-place.widthPx / 2, -place.heightPx / 2, place.widthPx, place.heightPx, level === "labels" ? 4 : 1.5);
    pen.fillStyle = level === "labels" ? ink.ground : ink.ink;
    pen.fill();
    pen.lineWidth = level === "labels" ? 1.4 : 1;
    pen.stroke();
    pen.restore();
    if (level === "labels") drawTicks(pen, mark, place, pitch, ink.ink);
  }
}

function drawTerminalMarks(pen: Pen, { scene, view, ink, shown }: Picture): void {
  const isFree = openScreenBuckets(view);
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 3;
  pen.beginPath();
  for (const i of scene.terminals.index.within(shown)) {
    const mark = scene.terminals.marks[i];
    const place = mark && terminalPlacePx(mark, view);
    if (!place || !isFree(place.x, place.y)) continue;
    const dx = (mark.frame.alongX * place.widthPx) / 2;
    const dy = (mark.frame.alongY * place.widthPx) / 2;
    pen.moveTo(place.x - dx, place.y - dy);
    pen.lineTo(place.x + dx, place.y + dy);
  }
  pen.stroke();
}

function drawHangers(pen: Pen, mark: TerminalMark, place: HungPlace): void {
  const { frame } = mark;
  pen.beginPath();
  for (const side of [-1, 1]) {
    const topX = place.strandX + frame.alongX * side * 2;
    const topY = place.strandY + frame.alongY * side * 2;
    const foot = (side * place.widthPx) / 4;
    pen.moveTo(topX, topY);
    pen.lineTo(
      place.x + frame.alongX * foot - frame.belowX * (place.heightPx / 2),
      place.y + frame.alongY * foot - frame.belowY * (place.heightPx / 2),
    );
  }
  pen.stroke();
}

function drawTicks(pen: Pen, mark: TerminalMark, place: HungPlace, pitch: number, colour: string): void {
  const width = pitch * 0.5;
  const height = pitch * 0.92;
  pen.fillStyle = colour;
  pen.strokeStyle = colour;
  pen.lineWidth = 0.8;
  for (const tick of mark.ticks) {
    const [x, y] = tickPoint(place, mark, tick, pitch);
    pen.save();
    pen.translate(x, y);
    pen.rotate(place.turnRad);
    if (tick.isUsed) pen.fillRect(-width / 2 - 0.3, -height / 2 - 0.3, width + 0.6, height + 0.6);
    else pen.strokeRect(-width / 2, -height / 2, width, height);
    if (tick.isReserved) {
      pen.beginPath();
      pen.moveTo(-width / 2, height / 2);
      pen.lineTo(width / 2, -height / 2);
      pen.stroke();
    }
    pen.restore();
  }
}

/** Coils as small spirals under the strand. */
export function drawCoils(pen: Pen, { scene, view, level, ink, shown }: Picture): void {
  if (level === "marks") return;
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 1;
  pen.beginPath();
  for (const i of scene.coils.index.within(shown)) {
    const mark = scene.coils.marks[i];
    if (!mark) continue;
    const place = coilPlacePx(mark, view, terminalOf(mark, scene.terminals));
    spiral(pen, place.x, place.y, place.widthPx / 2);
  }
  pen.stroke();
}

/** The terminal a coil waits at. */
export function terminalOf(mark: CoilMark, terminals: Picture["scene"]["terminals"]): TerminalMark | undefined {
  const position = mark.terminalId === null ? undefined : terminals.positionOf.get(mark.terminalId);
  return position === undefined ? undefined : terminals.marks[position];
}

function spiral(pen: Pen, x: number, y: number, radius: number): void {
  const turnCount = 2.25;
  const stepCount = 30;
  for (let step = 0; step <= stepCount; step += 1) {
    const part = step / stepCount;
    const angle = -Math.PI / 2 - (1 - part) * turnCount * Math.PI * 2;
    const r = radius * (0.15 + 0.85 * part);
    const px = x + Math.cos(angle) * r;
    const py = y + Math.sin(angle) * r;
    if (step === 0) pen.moveTo(px, py);
    else pen.lineTo(px, py);
  }
}

/** Closures: a bar on the cable with a crossing stroke. */
export function drawClosures(pen: Pen, { scene, view, level, ink, shown }: Picture): void {
  if (level === "marks") return;
  const width = level === "labels" ? 22 : 12;
  const height = level === "labels" ? 7 : 4;
  pen.strokeStyle = ink.ink;
  pen.fillStyle = ink.ground;
  pen.lineWidth = 1.4;
  for (const i of scene.closures.index.within(shown)) {
    const mark = scene.closures.marks[i];
    if (!mark) continue;
    const below = cableGapPx(level, 0);
    pen.save();
    pen.translate(
      screenX(view, mark.eastM) + mark.frame.belowX * below,
      screenY(view, mark.northM) + mark.frame.belowY * below,
    );
    pen.rotate(Math.atan2(mark.frame.alongY, mark.frame.alongX));
    pen.beginPath();
    pen.roundRect(-width / 2, -height / 2, width, height, 2);
    pen.fill();
    pen.moveTo(-height, height);
    pen.lineTo(height, -height);
    pen.stroke();
    pen.restore();
  }
}

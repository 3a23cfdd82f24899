import { type RefKey, splitRef } from "../app/ref.ts";
import { bandReachPx, bandWidthPx } from "./drawCrossings.ts";
import { terminalOf } from "./drawHung.ts";
import { dropLine } from "./dropLine.ts";
import { screenPoint } from "./hitTest.ts";
import { coilPlacePx, type HungPlace, terminalPlacePx } from "./hungPlace.ts";
import { housePx, ringPx } from "./level.ts";
import type { Pen, Picture } from "./paint.ts";
import { structurePlacePx } from "./sitePlace.ts";
import { at } from "./spanMarks.ts";
import { screenX, screenY } from "./viewport.ts";

/** What is chosen and what is under the hand, in the accent. */
export function drawHands(pen: Pen, picture: Picture, selection: readonly RefKey[], hover: RefKey | null): void {
  pen.strokeStyle = picture.ink.accent;
  pen.lineWidth = 1.25;
  if (hover !== null && !selection.includes(hover)) outline(pen, picture, hover, 3);
  pen.lineWidth = 2.5;
  for (const ref of selection) {
    outline(pen, picture, ref, 3.5);
    drawServed(pen, picture, ref);
  }
}

function outline(pen: Pen, picture: Picture, ref: RefKey, gap: number): void {
  const { scene, view, level } = picture;
  const { table, id } = splitRef(ref);
  if (table === "terminal") {
    const mark = scene.terminals.marks[scene.terminals.positionOf.get(id) ?? -1];
    if (mark) plate(pen, terminalPlacePx(mark, view), gap);
    return;
  }
  if (table === "slack") {
    const mark = scene.coils.marks[scene.coils.positionOf.get(id) ?? -1];
    if (mark) plate(pen, coilPlacePx(mark, view, terminalOf(mark, scene.terminals)), gap);
    return;
  }
  if (table === "crossing") {
    const mark = scene.crossings.marks.find((one) => one.id === id);
    if (!mark) return;
    const turnRad = Math.atan2(mark.frame.alongY, mark.frame.alongX);
    const [x, y] = [screenX(view, mark.eastM), screenY(view, mark.northM)];
    const widthPx = bandWidthPx(mark, view);
    plate(pen, { x, y, strandX: x, strandY: y, widthPx, heightPx: bandReachPx(level) * 2, turnRad }, gap);
    return;
  }
  if (table === "structure") {
    const mark = scene.structures.marks[scene.structures.positionOf.get(id) ?? -1];
    if (mark) plate(pen, structurePlacePx(mark, view, level), gap);
    return;
  }
  if (table === "span") {
    drawSpanLine(pen, picture, id);
    return;
  }
  const point = screenPoint(picture, ref);
  if (!point) return;
  const radius = (table === "pole" ? ringPx(view) : table === "livingUnit" ? housePx(view) * 0.72 : 10) + gap;
  pen.beginPath();
  pen.arc(point[0], point[1], radius, 0, Math.PI * 2);
  pen.stroke();
}

function plate(pen: Pen, place: HungPlace, gap: number): void {
  pen.save();
  pen.translate(place.x, place.y);
  pen.rotate(place.turnRad);
  pen.beginPath();
  const width = place.widthPx + gap * 2;
  const height = place.heightPx + gap * 2;
  pen.roundRect(-width / 2, -height / 2, width, height, 6);
  pen.stroke();
  pen.restore();
}

function drawSpanLine(pen: Pen, { scene: { spans }, view }: Picture, id: string): void {
  const i = spans.positionOf.get(id);
  if (i === undefined) return;
  pen.beginPath();
  pen.moveTo(screenX(view, at(spans.fromEastM, i)), screenY(view, at(spans.fromNorthM, i)));
  pen.lineTo(screenX(view, at(spans.toEastM, i)), screenY(view, at(spans.toNorthM, i)));
  pen.stroke();
}

/** The drops of a chosen terminal or living unit, so that one sees whom it serves. */
function drawServed(pen: Pen, picture: Picture, ref: RefKey): void {
  const { scene, level } = picture;
  const { table, id } = splitRef(ref);
  if (level === "marks" || (table !== "terminal" && table !== "livingUnit")) return;
  const terminal = table === "terminal" ? scene.terminals.positionOf.get(id) : undefined;
  const house = table === "livingUnit" ? scene.houses.positionOf.get(id) : undefined;
  pen.save();
  pen.lineWidth = 1.25;
  pen.beginPath();
  for (const drop of scene.drops.marks) {
    if (drop.terminal !== terminal && drop.house !== house) continue;
    const line = dropLine(picture, drop);
    if (!line) continue;
    pen.moveTo(line[0], line[1]);
    pen.lineTo(line[2], line[3]);
  }
  pen.stroke();
  pen.restore();
}

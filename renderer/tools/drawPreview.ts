import { farPoleId, spansAtPole } from "../../core/plant/geometry.ts";
import type { Plant } from "../../core/plant/plant.ts";
import type { RefKey } from "../app/ref.ts";
import { hang } from "../canvas/hungMarks.ts";
import { terminalPlacePx } from "../canvas/hungPlace.ts";
import { lettering } from "../canvas/ink.ts";
import { ringPx } from "../canvas/level.ts";
import type { Pen, Picture } from "../canvas/paint.ts";
import { pointOfSpan } from "../canvas/spanMarks.ts";
import { screenX, screenY } from "../canvas/viewport.ts";
import { dropEnds } from "./grip.ts";
import type { DropHand, Hand, TerminalHand } from "./hand.ts";
import type { MeasurePoint } from "./measure.ts";
import type { PoleSnap } from "./poleSnap.ts";

/** How far the dimension stands off the strand, px. */
const dimensionPx = 20;

/** What is under the hand as it would be, its dimension and what it has snapped to. */
export function drawPreview(pen: Pen, picture: Picture, plant: Plant, hand: Hand | null): void {
  if (!hand) return;
  pen.save();
  pen.strokeStyle = picture.ink.accent;
  pen.fillStyle = picture.ink.accent;
  pen.lineWidth = 2;
  if (hand.refusal !== null) pen.setLineDash([3, 3]);
  if (hand.kind === "terminal") drawTerminal(pen, picture, plant, hand);
  else if (hand.kind === "drop") drawDropEnd(pen, picture, plant, hand);
  else {
    if (hand.snap) drawLineGuide(pen, picture, hand.snap.guide);
    const [x, y] = [screenX(picture.view, hand.eastM), screenY(picture.view, hand.northM)];
    pen.beginPath();
    for (const spanId of spansAtPole(plant, hand.poleId)) {
      const far = picture.scene.places.poleAt(farPoleId(plant, spanId, hand.poleId));
      pen.moveTo(x, y);
      pen.lineTo(screenX(picture.view, far.eastM), screenY(picture.view, far.northM));
    }
    pen.moveTo(x + ringPx(picture.view) + 2, y);
    pen.arc(x, y, ringPx(picture.view) + 2, 0, Math.PI * 2);
    pen.stroke();
  }
  pen.restore();
}

function drawTerminal(pen: Pen, picture: Picture, plant: Plant, hand: TerminalHand): void {
  const { scene, view } = picture;
  const mark = scene.terminals.marks[scene.terminals.positionOf.get(hand.terminalId) ?? -1];
  if (!mark) return;
  const hung = hang(plant, scene.spans, hand.terminalId, hand.spanId, hand.offsetM);
  const place = terminalPlacePx({ ...mark, ...hung }, view);
  const { frame } = hung;
  pen.save();
  pen.translate(place.x, place.y);
  pen.rotate(place.turnRad);
  pen.beginPath();
  pen.roundRect(-place.widthPx / 2, -place.heightPx / 2, place.widthPx, place.heightPx, 4);
  pen.stroke();
  pen.restore();
  const [aboveX, aboveY] = [-frame.belowX * dimensionPx, -frame.belowY * dimensionPx];
  const { fromPoleId, toPoleId, lengthM } = plant.rowOf("span", hand.spanId);
  const pole = scene.places.poleAt(hand.offsetM <= lengthM / 2 ? fromPoleId : toPoleId);
  const [poleX, poleY] = [screenX(view, pole.eastM), screenY(view, pole.northM)];
  pen.lineWidth = 1;
  pen.setLineDash([]);
  pen.beginPath();
  for (const [x, y] of [
    [poleX, poleY],
    [place.strandX, place.strandY],
  ] as const) {
    pen.moveTo(x + aboveX * 0.3, y + aboveY * 0.3);
    pen.lineTo(x + aboveX * 1.25, y + aboveY * 1.25);
  }
  pen.moveTo(poleX + aboveX, poleY + aboveY);
  pen.lineTo(place.strandX + aboveX, place.strandY + aboveY);
  pen.stroke();
  if (hand.snap) drawGuide(pen, place.strandX, place.strandY, frame.belowX, frame.belowY);
}

/** The line one sees that a thing has snapped by. */
function drawGuide(pen: Pen, x: number, y: number, belowX: number, belowY: number): void {
  pen.setLineDash([5, 4]);
  pen.beginPath();
  pen.moveTo(x - belowX * 46, y - belowY * 46);
  pen.lineTo(x + belowX * 46, y + belowY * 46);
  pen.stroke();
}

function drawLineGuide(pen: Pen, { view }: Picture, [from, to]: PoleSnap["guide"]): void {
  const ends = [from, to].map((one) => [screenX(view, one.eastM), screenY(view, one.northM)] as const);
  const [[x1, y1] = [0, 0], [x2, y2] = [0, 0]] = ends;
  const lengthPx = Math.max(1, Math.hypot(x2 - x1, y2 - y1));
  const [overX, overY] = [((x2 - x1) / lengthPx) * 60, ((y2 - y1) / lengthPx) * 60];
  pen.save();
  pen.lineWidth = 1;
  pen.setLineDash([5, 4]);
  pen.beginPath();
  pen.moveTo(x1 - overX, y1 - overY);
  pen.lineTo(x2 + overX, y2 + overY);
  pen.stroke();
  pen.restore();
}

function drawDropEnd(pen: Pen, { scene, view }: Picture, plant: Plant, hand: DropHand): void {
  const unit = scene.places.unitAt(plant.rowOf("livingUnit", plant.rowOf("drop", hand.dropId).livingUnitId));
  pen.beginPath();
  pen.moveTo(screenX(view, unit.eastM), screenY(view, unit.northM));
  pen.lineTo(screenX(view, hand.eastM), screenY(view, hand.northM));
  pen.stroke();
}

/** Rings at the ports of the chosen living unit's drops: where a drop is taken hold of. */
export function drawDropEnds(pen: Pen, picture: Picture, selection: readonly RefKey[]): void {
  pen.strokeStyle = picture.ink.accent;
  pen.fillStyle = picture.ink.ground;
  pen.lineWidth = 2;
  for (const { x, y } of dropEnds(picture, selection)) {
    pen.beginPath();
    pen.arc(x, y, 4.5, 0, Math.PI * 2);
    pen.fill();
    pen.stroke();
  }
}

/** The measured line with its points numbered. */
export function drawMeasure(pen: Pen, { scene, view, ink }: Picture, measured: readonly MeasurePoint[] | null): void {
  if (!measured) return;
  // what was caught on the strand is drawn where the page has it
  const points = measured.map((one) =>
    one.on && scene.spans.positionOf.has(one.on.spanId)
      ? pointOfSpan(scene.spans, one.on.spanId, one.on.offsetM)
      : scene.places.pointAt(one),
  );
  pen.strokeStyle = ink.accent;
  pen.fillStyle = ink.accent;
  pen.lineWidth = 1.5;
  pen.beginPath();
  points.forEach(({ eastM, northM }, i) => {
    const [x, y] = [screenX(view, eastM), screenY(view, northM)];
    if (i === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
  pen.stroke();
  pen.font = lettering(12 * ink.letterFrac, 600);
  pen.textAlign = "left";
  pen.textBaseline = "alphabetic";
  points.forEach(({ eastM, northM }, i) => {
    const [x, y] = [screenX(view, eastM), screenY(view, northM)];
    pen.beginPath();
    pen.arc(x, y, 3.5, 0, Math.PI * 2);
    pen.fill();
    pen.fillText(String(i + 1), x + 7, y - 7);
  });
}

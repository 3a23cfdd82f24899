import { poleTopM } from "../../core/plant/profile.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { lettering } from "../canvas/ink.ts";
import type { Pen } from "../canvas/paint.ts";
import { attachmentWords } from "../panels/words.ts";
import { labelLinePx, writeLines } from "./drawLabel.ts";
import { elevationY } from "./frame.ts";
import { type PoleMark, type ProfileLook, type ProfileScene, tagLetterPx } from "./profileScene.ts";

/** Least distance between poles for attachments to be named, px. */
const namedPolePx = 150;

/** Poles to their height; where they stand close a shade behind the lines. */
export function drawProfilePoles(pen: Pen, { frame, ink }: ProfileLook, scene: ProfileScene): void {
  pen.strokeStyle = scene.isRoomy ? ink.ink : ink.hair;
  pen.lineWidth = scene.isRoomy ? 3 : 1;
  for (const isKnown of [true, false]) {
    pen.setLineDash(isKnown ? [] : [4, 3]);
    pen.beginPath();
    for (const { pole, x } of scene.poles) {
      if ((pole.aboveGroundM !== null) !== isKnown) continue;
      pen.moveTo(x, elevationY(frame, pole.footM));
      pen.lineTo(x, elevationY(frame, poleTopM(pole)));
    }
    pen.stroke();
  }
  pen.setLineDash([]);
}

/** Tags below the feet of the poles; attachments of every owner, ours as filled dots, with their names where there is room. */
export function drawOnPoles(pen: Pen, look: ProfileLook, scene: ProfileScene): void {
  const { ink } = look;
  pen.font = lettering(tagLetterPx * ink.letterFrac, 600);
  pen.fillStyle = ink.ink;
  pen.textAlign = "center";
  pen.textBaseline = "top";
  for (const { pole, x, tagY } of scene.poles) if (tagY !== null) pen.fillText(pole.tag, x, tagY);
  if (!scene.isRoomy) return;
  for (const isOurs of [false, true]) drawDots(pen, look, scene, isOurs);
  for (const mark of scene.poles) if (mark.roomPx >= namedPolePx) nameAttachments(pen, look, mark);
}

function drawDots(pen: Pen, { frame, ink }: ProfileLook, { poles }: ProfileScene, isOurs: boolean): void {
  pen.strokeStyle = ink.ink;
  pen.beginPath();
  for (const { pole, x, roomPx } of poles) {
    const radiusPx = roomPx > 60 ? 3.5 : 2.25;
    for (const { kind, heightM } of pole.attachments) {
      if ((kind === "ourStrand") !== isOurs) continue;
      const y = elevationY(frame, pole.footM + heightM);
      pen.moveTo(x + radiusPx, y);
      pen.arc(x, y, radiusPx, 0, Math.PI * 2);
    }
  }
  pen.fillStyle = isOurs ? ink.ink : ink.ground;
  pen.fill();
  pen.lineWidth = 1.25;
  pen.stroke();
}

/** From a pole to its names, px. */
const asidePx = 9;

/** How far over its attachment a name stands, so that it does not lie on the wire, px at the usual size of letters. */
const overPx = 8;

/** A name pushed farther than this by those under it is left out, px at the usual size of letters. */
const mostPushedPx = 40;

/** Names the attachments of a pole with their heights, upwards, each over the one below and led to its attachment where it had to give way. */
function nameAttachments(pen: Pen, look: ProfileLook, { pole, x }: PoleMark): void {
  const { frame, ink, units } = look;
  const linePx = labelLinePx * ink.letterFrac;
  let freeY = Number.POSITIVE_INFINITY;
  for (const { kind, heightM } of pole.attachments) {
    const y = elevationY(frame, pole.footM + heightM);
    const wantedY = y - overPx * ink.letterFrac;
    const middleY = Math.min(wantedY, freeY - linePx / 2);
    if (wantedY - middleY > mostPushedPx * ink.letterFrac) continue;
    freeY = middleY - linePx / 2;
    const text = `${attachmentWords[kind]} ${formatLength(heightM, units, "height")}`;
    const write = writeLines(pen, look, [{ text, isBold: kind === "ourStrand" }]);
    const isRight = x + asidePx + write.widthPx < frame.widthPx;
    if (wantedY - middleY > 2) lead(pen, look, [x, y], [x + (isRight ? asidePx : -asidePx), middleY]);
    write.at(isRight ? x + asidePx : x - asidePx - write.widthPx, middleY - linePx / 2);
  }
}

function lead(
  pen: Pen,
  { ink }: ProfileLook,
  [x, y]: readonly [number, number],
  [toX, toY]: readonly [number, number],
): void {
  pen.strokeStyle = ink.soft;
  pen.lineWidth = 0.75;
  pen.beginPath();
  pen.moveTo(x, y);
  pen.lineTo(toX, toY);
  pen.stroke();
}

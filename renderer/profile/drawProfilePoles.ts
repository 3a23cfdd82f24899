import { poleTopM } from "../../core/plant/profile.ts";
import { formatLength } from "../../core/units/formatLength.ts";
import { lettering } from "../canvas/ink.ts";
import type { Pen } from "../canvas/paint.ts";
import { attachmentWords } from "../panels/words.ts";
import { elevationY } from "./frame.ts";
import { type PoleMark, type ProfileLook, type ProfileScene, tagLetterPx } from "./profileScene.ts";

/** Least distance between poles for attachments to be named, px. */
const namedPolePx = 150;

/** Poles to their height, feet tagged below the ground; attachments of every owner, ours as filled dots. */
export function drawProfilePoles(pen: Pen, look: ProfileLook, scene: ProfileScene): void {
  const { frame, ink } = look;
  pen.strokeStyle = ink.ink;
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
  pen.font = lettering(tagLetterPx * ink.letterFrac, 600);
  pen.fillStyle = ink.ink;
  pen.textAlign = "center";
  pen.textBaseline = "top";
  for (const { pole, x, isTagged } of scene.poles)
    if (isTagged) pen.fillText(pole.tag, x, elevationY(frame, pole.footM) + 5);
  if (!scene.isRoomy) return;
  for (const isOurs of [false, true]) drawDots(pen, look, scene, isOurs);
  for (const mark of scene.poles) if (mark.roomPx >= namedPolePx) nameAttachments(pen, look, mark);
}

function drawDots(pen: Pen, { frame, ink }: ProfileLook, { poles }: ProfileScene, isOurs: boolean): void {
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

/** Names the attachments of a pole with their heights, upwards, each where the one below leaves room. */
function nameAttachments(pen: Pen, look: ProfileLook, { pole, x }: PoleMark): void {
  const { frame, ink, units } = look;
  let namedFromY = Number.POSITIVE_INFINITY;
  for (const { kind, heightM } of pole.attachments) {
    const y = elevationY(frame, pole.footM + heightM);
    if (y > namedFromY - 13 * ink.letterFrac) continue;
    namedFromY = y;
    plate(
      pen,
      look,
      `${attachmentWords[kind]} ${formatLength(heightM, units, "height")}`,
      [x, y],
      kind === "ourStrand",
    );
  }
}

/** A label beside its attachment, on the side where the paper has room. */
function plate(
  pen: Pen,
  { frame, ink }: ProfileLook,
  text: string,
  [x, y]: readonly [number, number],
  isOurs: boolean,
): void {
  pen.font = lettering(11 * ink.letterFrac, isOurs ? 600 : 400);
  const widthPx = pen.measureText(text).width;
  const leftPx = x + 8 + widthPx < frame.widthPx ? x + 8 : x - 8 - widthPx;
  pen.textAlign = "left";
  pen.textBaseline = "middle";
  pen.fillStyle = ink.ground;
  pen.fillRect(leftPx - 2, y - 7 * ink.letterFrac, widthPx + 4, 14 * ink.letterFrac);
  pen.fillStyle = isOurs ? ink.ink : ink.soft;
  pen.fillText(text, leftPx, y);
}

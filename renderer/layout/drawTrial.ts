import { type HungPlace, terminalPlacePx } from "../canvas/hungPlace.ts";
import { lettering } from "../canvas/ink.ts";
import { housePx } from "../canvas/level.ts";
import type { Pen, Picture } from "../canvas/paint.ts";
import { openScreenBuckets } from "../canvas/screenBuckets.ts";
import { type Box, screenX, screenY } from "../canvas/viewport.ts";
import type { TrialMarks, TrialTerminal } from "./trialMarks.ts";
import { whatIfWords as words } from "./whatIfWords.ts";

const letterPx = 11;
/** From a bar to the words under its name, px. */
const underNamePx = 32;

/** A trial beside the present layout: dashed what it would hang, struck through what would go, in words from near by. */
export function drawTrial(pen: Pen, picture: Picture, marks: TrialMarks): void {
  pen.save();
  if (picture.level !== "marks") drawDrops(pen, picture, marks);
  drawGhosts(pen, picture, marks);
  drawGone(pen, picture, marks);
  if (picture.level !== "marks") drawLost(pen, picture, marks);
  pen.restore();
}

function isIn({ westM, eastM, southM, northM }: Box, at: { readonly eastM: number; readonly northM: number }): boolean {
  return at.eastM >= westM && at.eastM <= eastM && at.northM >= southM && at.northM <= northM;
}

function drawDrops(pen: Pen, { view, shown, ink }: Picture, { drops }: TrialMarks): void {
  pen.strokeStyle = ink.accent;
  pen.lineWidth = 1.4;
  pen.setLineDash([6, 4]);
  pen.beginPath();
  for (const { from, eastM, northM } of drops) {
    if (!isIn(shown, { eastM, northM }) && !isIn(shown, from)) continue;
    const place = terminalPlacePx(from, view);
    pen.moveTo(place.x, place.y);
    pen.lineTo(screenX(view, eastM), screenY(view, northM));
  }
  pen.stroke();
  pen.setLineDash([]);
}

/** Terminals of a list in view with their places; from afar one of those that would lie on each other. */
function inView(
  { view, shown, level }: Picture,
  terminals: readonly TrialTerminal[],
): readonly (readonly [TrialTerminal, HungPlace])[] {
  const isFree = level === "marks" ? openScreenBuckets(view) : () => true;
  return terminals
    .filter((one) => isIn(shown, one))
    .map((one) => [one, terminalPlacePx(one, view)] as const)
    .filter(([, { x, y }]) => isFree(x, y));
}

function drawGhosts(pen: Pen, picture: Picture, { ghosts }: TrialMarks): void {
  const { ink, level } = picture;
  for (const [one, place] of inView(picture, ghosts)) {
    pen.strokeStyle = ink.accent;
    pen.fillStyle = ink.ground;
    pen.lineWidth = level === "labels" ? 1.8 : 1.2;
    pen.setLineDash(level === "labels" ? [5, 3] : []);
    onPlace(pen, place, () => {
      pen.beginPath();
      pen.roundRect(-place.widthPx / 2, -place.heightPx / 2, place.widthPx, place.heightPx, level === "labels" ? 4 : 1);
      pen.fill();
      pen.stroke();
    });
    pen.setLineDash([]);
    if (level === "labels") tell(pen, picture, one, place, ink.accent, letterPx);
  }
}

function drawGone(pen: Pen, picture: Picture, { gone }: TrialMarks): void {
  const { ink, level } = picture;
  pen.lineWidth = level === "labels" ? 2.2 : 1.6;
  for (const [one, place] of inView(picture, gone)) {
    pen.strokeStyle = ink.ink;
    onPlace(pen, place, () => {
      const [x, y] = [Math.max(3, place.heightPx / 2 + 3), place.heightPx / 2 + 3];
      pen.beginPath();
      pen.moveTo(-x, -y);
      pen.lineTo(x, y);
      pen.moveTo(-x, y);
      pen.lineTo(x, -y);
      pen.stroke();
    });
    if (level === "labels") tell(pen, picture, one, place, ink.ink, underNamePx);
  }
}

function drawLost(pen: Pen, { view, shown, ink, level }: Picture, { lost }: TrialMarks): void {
  const half = housePx(view) / 2 + 2;
  pen.strokeStyle = ink.ink;
  pen.lineWidth = 2;
  for (const at of lost) {
    if (!isIn(shown, at)) continue;
    const [x, y] = [screenX(view, at.eastM), screenY(view, at.northM)];
    pen.beginPath();
    pen.moveTo(x - half, y - half);
    pen.lineTo(x + half, y + half);
    pen.moveTo(x - half, y + half);
    pen.lineTo(x + half, y - half);
    pen.stroke();
    if (level === "labels") write(pen, words.noPort, x, y - half - letterPx, ink.ground, ink.ink);
  }
}

/** The words of a terminal, outward of its bar. */
function tell(
  pen: Pen,
  { ink }: Picture,
  { words: text, frame }: TrialTerminal,
  place: HungPlace,
  fill: string,
  awayPx: number,
): void {
  const away = place.heightPx / 2 + awayPx;
  write(pen, text, place.x + frame.belowX * away, place.y + frame.belowY * away, ink.ground, fill);
}

function write(pen: Pen, text: string, x: number, y: number, ground: string, fill: string): void {
  pen.font = lettering(letterPx, 600);
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.lineJoin = "round";
  pen.lineWidth = 4;
  pen.strokeStyle = ground;
  pen.strokeText(text, x, y);
  pen.fillStyle = fill;
  pen.fillText(text, x, y);
}

function onPlace(pen: Pen, { x, y, turnRad }: HungPlace, draw: () => void): void {
  pen.save();
  pen.translate(x, y);
  pen.rotate(turnRad);
  draw();
  pen.restore();
}

import { lightMargin } from "../../core/plant/lightMargin.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { terminalLight } from "../../core/plant/terminalLight.ts";
import { dropLine } from "../canvas/dropLine.ts";
import { terminalPlacePx } from "../canvas/hungPlace.ts";
import { lettering } from "../canvas/ink.ts";
import { housePx } from "../canvas/level.ts";
import type { Pen, Picture } from "../canvas/paint.ts";
import { type BandInk, bandInks, dropBand, marginMark, terminalBand } from "./lightBand.ts";

const [pillHeightPx, letterPx] = [15, 11];

/** The light of the route over the diagram: drops and houses inked by their band, each terminal's least margin beside it. */
export function drawLight(pen: Pen, picture: Picture, plant: Plant): void {
  if (picture.level !== "marks") drawUnits(pen, picture, plant);
  const pills: Pill[] = [];
  for (const pill of pillsOf(pen, picture, plant)) {
    // where they would lie on each other the worst is told, the others are a dot
    if (pills.some((one) => overlap(one, pill))) drawDot(pen, picture, pill);
    else pills.push(pill);
  }
  for (const pill of pills) drawPill(pen, picture, pill);
}

type Pill = {
  readonly x: number;
  readonly y: number;
  readonly widthPx: number;
  readonly text: string;
  readonly ink: BandInk;
  readonly rank: number;
};

/** Each terminal in view with its figure, the worst first. */
function pillsOf(pen: Pen, { scene, view, shown, level }: Picture, plant: Plant): readonly Pill[] {
  pen.font = lettering(letterPx, 600);
  const pills = scene.terminals.index.within(shown).flatMap((i): readonly Pill[] => {
    const mark = scene.terminals.marks[i];
    if (!mark) return [];
    const light = terminalLight(plant, mark.id);
    const band = terminalBand(light);
    if (band === null) return [];
    const { worst, overloadDb } = light;
    const isTold = worst && overloadDb !== null && band !== "dark";
    const text = isTold ? marginMark(worst.marginDb, worst.way, overloadDb) : "dark";
    const place = terminalPlacePx(mark, view);
    // a terminal's name stands right under its bar
    const away = place.heightPx / 2 + pillHeightPx / 2 + (level === "labels" ? 36 : 3);
    return [
      {
        x: place.x + mark.frame.belowX * away,
        y: place.y + mark.frame.belowY * away,
        widthPx: pen.measureText(text).width + 8,
        text,
        ink: bandInks[band],
        rank: isTold ? Math.min(worst.marginDb, overloadDb) : Number.NEGATIVE_INFINITY,
      },
    ];
  });
  return pills.sort((a, b) => a.rank - b.rank);
}

function overlap(a: Pill, b: Pill): boolean {
  return Math.abs(a.x - b.x) < (a.widthPx + b.widthPx) / 2 + 2 && Math.abs(a.y - b.y) < pillHeightPx + 2;
}

function drawDot(pen: Pen, { ink }: Picture, pill: Pill): void {
  pen.beginPath();
  pen.arc(pill.x, pill.y - pillHeightPx / 2, 3, 0, Math.PI * 2);
  pen.fillStyle = pill.ink.fill;
  pen.fill();
  pen.lineWidth = 1;
  pen.strokeStyle = ink.ground;
  pen.stroke();
}

function drawUnits(pen: Pen, picture: Picture, plant: Plant): void {
  const { scene, view, shown, level, ink } = picture;
  const radius = Math.max(2.5, housePx(view) * 0.28);
  for (const i of scene.drops.index.within(shown)) {
    const mark = scene.drops.marks[i];
    const line = mark && dropLine(picture, mark);
    if (!line) continue;
    const margin = lightMargin(plant, mark.id);
    const band = dropBand(margin);
    pen.strokeStyle = bandInks[band].fill;
    pen.lineWidth = 1.6;
    pen.setLineDash(band === "over" || band === "dark" ? [4, 3] : []);
    pen.beginPath();
    pen.moveTo(line[0], line[1]);
    pen.lineTo(line[2], line[3]);
    pen.stroke();
    pen.setLineDash([]);
    pen.beginPath();
    pen.arc(line[2], line[3], radius, 0, Math.PI * 2);
    pen.fillStyle = bandInks[band].fill;
    pen.fill();
    pen.lineWidth = 1;
    pen.strokeStyle = ink.ink;
    pen.stroke();
    if (level !== "labels" || margin.kind === "unknown") continue;
    pen.font = lettering(10, 500);
    pen.textAlign = "center";
    pen.textBaseline = "middle";
    pen.fillStyle = ink.ink;
    pen.fillText(marginMark(margin.worstDb, margin.way, margin.overloadDb), line[2], line[3] - radius - 9);
  }
}

function drawPill(pen: Pen, { ink }: Picture, { x, y, widthPx, text, ink: { fill, on } }: Pill): void {
  pen.font = lettering(letterPx, 600);
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.beginPath();
  pen.roundRect(x - widthPx / 2, y - pillHeightPx / 2, widthPx, pillHeightPx, 4);
  pen.fillStyle = fill;
  pen.fill();
  pen.lineWidth = 1;
  pen.strokeStyle = ink.ground;
  pen.stroke();
  pen.fillStyle = on;
  pen.fillText(text, x, y + 0.5);
}

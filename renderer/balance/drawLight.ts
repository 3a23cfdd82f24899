import { dropLine } from "../canvas/dropLine.ts";
import { terminalPlacePx } from "../canvas/hungPlace.ts";
import { lettering } from "../canvas/ink.ts";
import { housePx } from "../canvas/level.ts";
import type { Pen, Picture } from "../canvas/paint.ts";
import { openScreenBuckets } from "../canvas/screenBuckets.ts";
import { type BandInk, bandInks, dropBand, marginMark, terminalBand } from "./lightBand.ts";
import type { LightSeen } from "./lightSeen.ts";

const [pillHeightPx, letterPx] = [15, 11];
const figureFromHousePx = 28;

/** The light of the route over the diagram: drops and houses inked by their band, each terminal's least margin beside it, as far as it is reckoned. */
export function drawLight(pen: Pen, picture: Picture, seen: LightSeen): void {
  if (picture.level !== "marks") drawUnits(pen, picture, seen);
  const [pills, dots]: readonly [Pill[], Pill[]] = [[], []];
  for (const pill of pillsOf(pen, picture, seen)) {
    // where they would lie on each other the worst is told, the others are a dot
    if (pills.some((one) => overlap(one, pill))) dots.push(pill);
    else pills.push(pill);
  }
  drawDots(pen, picture, dots);
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
function pillsOf(pen: Pen, { scene, view, shown, level }: Picture, seen: LightSeen): readonly Pill[] {
  pen.font = lettering(letterPx, 600);
  const widths = new Map<string, number>();
  const widthOf = (text: string): number => {
    const known = widths.get(text) ?? pen.measureText(text).width;
    widths.set(text, known);
    return known;
  };
  const pills = scene.terminals.index.within(shown).flatMap((i): readonly Pill[] => {
    const mark = scene.terminals.marks[i];
    const light = mark && seen.get(mark.id)?.light;
    if (!light) return [];
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
        widthPx: widthOf(text) + 8,
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

/** Figures that would lie on worse ones, as dots: one path for each ink, the worst where dots would lie on each other. */
function drawDots(pen: Pen, { ink, view }: Picture, dots: readonly Pill[]): void {
  const isFree = openScreenBuckets(view);
  const seen = dots.filter(({ x, y }) => isFree(x, y));
  pen.lineWidth = 1;
  pen.strokeStyle = ink.ground;
  for (const band of new Set(seen.map((one) => one.ink))) {
    pen.beginPath();
    for (const one of seen) {
      if (one.ink !== band) continue;
      const y = one.y - pillHeightPx / 2;
      pen.moveTo(one.x + 3, y);
      pen.arc(one.x, y, 3, 0, Math.PI * 2);
    }
    pen.fillStyle = band.fill;
    pen.fill();
    pen.stroke();
  }
}

function drawUnits(pen: Pen, picture: Picture, seen: LightSeen): void {
  const { scene, view, shown, level, ink } = picture;
  const radius = Math.max(2.5, housePx(view) * 0.28);
  for (const i of scene.drops.index.within(shown)) {
    const mark = scene.drops.marks[i];
    const line = mark && dropLine(picture, mark);
    const margin = mark && seen.get(scene.terminals.marks[mark.terminal]?.id ?? "")?.margins.get(mark.id);
    if (!line || !margin) continue;
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
    drawUnitFigure(pen, picture, line, marginMark(margin.worstDb, margin.way, margin.overloadDb));
  }
}

/** A unit's figure on its drop, near the house: its number and name stand about the house. */
function drawUnitFigure(
  pen: Pen,
  { ink }: Picture,
  [fromX, fromY, toX, toY]: readonly [number, number, number, number],
  text: string,
): void {
  const lengthPx = Math.hypot(toX - fromX, toY - fromY);
  if (lengthPx < figureFromHousePx * 2) return;
  const part = figureFromHousePx / lengthPx;
  const [x, y] = [toX + (fromX - toX) * part, toY + (fromY - toY) * part];
  pen.font = lettering(10, 600);
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.lineJoin = "round";
  pen.lineWidth = 4;
  pen.strokeStyle = ink.ground;
  pen.strokeText(text, x, y);
  pen.fillStyle = ink.ink;
  pen.fillText(text, x, y);
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

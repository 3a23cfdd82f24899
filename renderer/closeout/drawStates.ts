import { type StandingState, standingOf } from "../../core/closeout/standing.ts";
import { type Subject, subjectOf } from "../../core/closeout/subject.ts";
import type { Plant } from "../../core/plant/plant.ts";
import { terminalPlacePx } from "../canvas/hungPlace.ts";
import { housePx, type Level, ringPx } from "../canvas/level.ts";
import type { Pen, Picture } from "../canvas/paint.ts";
import { openScreenBuckets } from "../canvas/screenBuckets.ts";
import { at } from "../canvas/spanMarks.ts";
import { screenX, screenY } from "../canvas/viewport.ts";

/** A terminal's name stands right under its bar. */
const underNamePx = 30;

type Spot = { readonly x: number; readonly y: number; readonly state: StandingState; readonly isMissing: boolean };

/** How far poles, spans, terminals and drops have come: the signs of the board beside each, underlined where readings are missing. */
export function drawStates(pen: Pen, picture: Picture, plant: Plant): void {
  for (const spot of spotsAt[picture.level](picture, plant)) drawSign(pen, picture, spot);
}

type SpotsOf = (picture: Picture, plant: Plant) => readonly Spot[];

const spotsAt: Readonly<Record<Level, SpotsOf>> = {
  /** The terminals alone, each where no other sign stands already. */
  marks: (picture, plant) => {
    const isFree = openScreenBuckets(picture.view);
    return terminalSpots(picture, plant).filter(({ x, y }) => isFree(x, y));
  },
  /** Without what is designed and no more: most of it stands too near to the next for two signs. */
  symbols: (picture, plant) => allSpots(picture, plant).filter((one) => one.state !== "designed"),
  labels: allSpots,
};

function allSpots(picture: Picture, plant: Plant): readonly Spot[] {
  return [poleSpots, spanSpots, terminalSpots, houseSpots].flatMap((spotsOf) => spotsOf(picture, plant));
}

/** Side of a sign, px. */
function boxOf({ level }: Picture): number {
  return level === "symbols" ? 7 : 10;
}

function spotOf(plant: Plant, subject: Subject, x: number, y: number): Spot {
  const { state, missing } = standingOf(plant, subject);
  return { x, y, state, isMissing: missing.length > 0 };
}

function poleSpots(picture: Picture, plant: Plant): readonly Spot[] {
  const { scene, view, shown } = picture;
  return scene.poles.index.within(shown).flatMap((i): readonly Spot[] => {
    const id = scene.poles.ids[i] ?? "";
    if (!plant.row("pole", id)) return [];
    const x = screenX(view, at(scene.poles.eastM, i)) - ringPx(view) - boxOf(picture);
    return [spotOf(plant, subjectOf("pole", id), x, screenY(view, at(scene.poles.northM, i)) + ringPx(view) + 2)];
  });
}

function spanSpots({ scene, view, shown }: Picture, plant: Plant): readonly Spot[] {
  const { ids, fromEastM, fromNorthM, toEastM, toNorthM, index } = scene.spans;
  return index.within(shown).flatMap((i): readonly Spot[] => {
    const id = ids[i] ?? "";
    if (plant.row("span", id)?.strandSectionId == null) return [];
    const x = screenX(view, (at(fromEastM, i) + at(toEastM, i)) / 2);
    const y = screenY(view, (at(fromNorthM, i) + at(toNorthM, i)) / 2);
    return [spotOf(plant, subjectOf("span", id), x, y)];
  });
}

function terminalSpots(picture: Picture, plant: Plant): readonly Spot[] {
  const { scene, view, shown, level } = picture;
  return scene.terminals.index.within(shown).flatMap((i): readonly Spot[] => {
    const mark = scene.terminals.marks[i];
    if (!mark || !plant.row("terminal", mark.id)) return [];
    const place = terminalPlacePx(mark, view);
    const away = place.heightPx / 2 + boxOf(picture) / 2 + (level === "labels" ? underNamePx : 4);
    const [x, y] = [place.x + mark.frame.belowX * away, place.y + mark.frame.belowY * away];
    return [spotOf(plant, subjectOf("terminal", mark.id), x, y)];
  });
}

function houseSpots(picture: Picture, plant: Plant): readonly Spot[] {
  const { scene, view, shown } = picture;
  const width = housePx(view);
  return scene.houses.index.within(shown).flatMap((i): readonly Spot[] => {
    const house = scene.houses.marks[i];
    const [dropId] = house?.unitIds.flatMap((id) => plant.where("drop", "livingUnitId", id)) ?? [];
    if (!house || dropId === undefined) return [];
    const x = screenX(view, house.eastM) - width / 2 - boxOf(picture) / 2;
    return [spotOf(plant, subjectOf("drop", dropId), x, screenY(view, house.northM) - width * 0.2)];
  });
}

function drawSign(pen: Pen, picture: Picture, { x, y, state, isMissing }: Spot): void {
  const { ink } = picture;
  const boxPx = boxOf(picture);
  const [left, top] = [Math.round(x - boxPx / 2) + 0.5, Math.round(y - boxPx / 2) + 0.5];
  pen.lineWidth = 1.4;
  pen.strokeStyle = ink.ink;
  pen.fillStyle = ink.ground;
  pen.fillRect(left - 1.5, top - 1.5, boxPx + 3, boxPx + (isMissing ? 5.5 : 3));
  pen.fillStyle = ink.ink;
  const line = (colour: string, [from, ...further]: readonly (readonly [number, number])[]) => {
    pen.strokeStyle = colour;
    pen.beginPath();
    if (from) pen.moveTo(...from);
    for (const point of further) pen.lineTo(...point);
    pen.stroke();
  };
  if (state === "designed")
    line(ink.soft, [
      [left + 1, y],
      [left + boxPx - 1, y],
    ]);
  else pen.strokeRect(left, top, boxPx, boxPx);
  if (state === "built") pen.fillRect(left, top + boxPx / 2, boxPx, boxPx / 2);
  if (state === "tested" || state === "accepted") pen.fillRect(left, top, boxPx, boxPx);
  if (state === "accepted")
    line(ink.ground, [
      [left + boxPx * 0.2, top + boxPx * 0.5],
      [left + boxPx * 0.42, top + boxPx * 0.74],
      [left + boxPx * 0.8, top + boxPx * 0.26],
    ]);
  if (isMissing && state !== "designed")
    line(ink.ink, [
      [left, top + boxPx + 3],
      [left + boxPx, top + boxPx + 3],
    ]);
}

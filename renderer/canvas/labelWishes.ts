import { formatLength } from "../../core/units/formatLength.ts";
import { bandReachPx } from "./drawCrossings.ts";
import { terminalOf } from "./drawHung.ts";
import { otherWireGapPx } from "./drawSpans.ts";
import { coilPlacePx, terminalPlacePx } from "./hungPlace.ts";
import { housePx, ringPx } from "./level.ts";
import type { Picture } from "./paint.ts";
import { elevationWishes, structureWishes } from "./siteLabels.ts";
import { at } from "./spanMarks.ts";
import { screenX, screenY, zoomOf } from "./viewport.ts";

/** Letters of names, and of figures and remarks, px at the usual size. */
const nameLetterPx = 12;
const figureLetterPx = 11;

/** Width of a text as it will be drawn, px. */
export type Measure = (text: string, sizePx: number, weight: 400 | 600) => number;

/** A label one would like to see, and the places for its middle, best first. */
export type LabelWish = {
  readonly text: string;
  readonly turnRad: number;
  readonly sizePx: number;
  readonly weight: 400 | 600;
  readonly places: readonly (readonly [number, number])[];
};

/** Every label of a picture in the order in which they find room: tags, terminals, crossings, lengths, houses, structures, coils, elevations, owners. */
export function labelWishes(picture: Picture, measure: Measure): readonly LabelWish[] {
  return [
    ...poleTags(picture, measure),
    ...terminalNames(picture, measure),
    ...crossingWords(picture),
    ...spanLengths(picture),
    ...houseNumbers(picture),
    ...structureWishes(picture, figureLetterPx * picture.ink.letterFrac),
    ...coilLengths(picture),
    ...elevationWishes(picture, figureLetterPx * picture.ink.letterFrac),
    ...otherOwners(picture),
  ];
}

function poleTags({ scene: { poles }, view, shown, ink }: Picture, measure: Measure): LabelWish[] {
  const sizePx = nameLetterPx * ink.letterFrac;
  const ring = ringPx(view);
  return poles.index.within(shown).map((i) => {
    const [x, y] = [screenX(view, at(poles.eastM, i)), screenY(view, at(poles.northM, i))];
    const text = poles.tags[i] ?? "";
    const aside = ring + 5 + measure(text, sizePx, 600) / 2;
    const up = ring + 5 + sizePx / 2;
    return {
      text,
      turnRad: 0,
      sizePx,
      weight: 600,
      places: [
        [x + aside, y - up],
        [x - aside, y - up],
        [x + aside, y + up],
        [x - aside, y + up],
        [x + aside, y],
        [x - aside, y],
        [x, y - up - 6],
        [x, y + up + 6],
      ],
    };
  });
}

function terminalNames({ scene: { terminals }, view, shown, ink }: Picture, measure: Measure): LabelWish[] {
  const sizePx = nameLetterPx * ink.letterFrac;
  return terminals.index.within(shown).flatMap((i): LabelWish[] => {
    const mark = terminals.marks[i];
    if (!mark) return [];
    const place = terminalPlacePx(mark, view);
    const { belowX, belowY, alongX, alongY } = mark.frame;
    const under = place.heightPx / 2 + 3 + sizePx / 2;
    const beside = -mark.away * (place.widthPx / 2 + 5 + measure(mark.name, sizePx, 400) / 2);
    const spot = (below: number, along: number) =>
      [place.x + belowX * below + alongX * along, place.y + belowY * below + alongY * along] as const;
    return [
      {
        text: mark.name,
        turnRad: place.turnRad,
        sizePx,
        weight: 400,
        places: [
          spot(under, 0),
          spot(0, beside),
          spot(under + 4, beside / 2),
          spot(under + 4, -beside / 2),
          spot(under + sizePx + 2, 0),
        ],
      },
    ];
  });
}

function crossingWords({ scene: { crossings }, view, level, units, shown, ink }: Picture): LabelWish[] {
  const sizePx = figureLetterPx * ink.letterFrac;
  return crossings.index.within(shown).flatMap((i): LabelWish[] => {
    const mark = crossings.marks[i];
    if (!mark) return [];
    const { belowX, belowY, alongX, alongY } = mark.frame;
    const [x, y] = [screenX(view, mark.eastM), screenY(view, mark.northM)];
    const reach = bandReachPx(level) + 2.5 + sizePx / 2;
    const spot = (below: number) => [x + belowX * below, y + belowY * below] as const;
    const turnRad = Math.atan2(alongY, alongX);
    return [
      {
        text: mark.leastM === null ? mark.words : `${mark.words}, ${formatLength(mark.leastM, units, "clearance")}`,
        turnRad,
        sizePx,
        weight: 400,
        places: [spot(-reach), spot(reach), spot(-reach - sizePx - 2), spot(reach + sizePx + 2)],
      },
    ];
  });
}

function spanLengths({ scene: { spans }, view, units, shown, ink }: Picture): LabelWish[] {
  const sizePx = figureLetterPx * ink.letterFrac;
  return spans.index.within(shown).flatMap((i): LabelWish[] => {
    const frame = spans.frames[i];
    const lengthM = at(spans.lengthM, i);
    if (!frame || lengthM * view.pxPerM < 48 * ink.letterFrac) return [];
    const fromX = screenX(view, at(spans.fromEastM, i));
    const fromY = screenY(view, at(spans.fromNorthM, i));
    const dx = screenX(view, at(spans.toEastM, i)) - fromX;
    const dy = screenY(view, at(spans.toNorthM, i)) - fromY;
    const above = -otherWireGapPx((spans.otherOwners[i]?.length ?? 0) - 1) + 2.5 + sizePx / 2;
    const spot = (part: number) =>
      [fromX + dx * part - frame.belowX * above, fromY + dy * part - frame.belowY * above] as const;
    return [
      {
        text: formatLength(lengthM, units, "span"),
        turnRad: Math.atan2(frame.alongY, frame.alongX),
        sizePx,
        weight: 400,
        places: [spot(0.5), spot(0.4), spot(0.6), spot(0.3), spot(0.7)],
      },
    ];
  });
}

function houseNumbers({ scene: { houses }, view, shown, ink }: Picture): LabelWish[] {
  const sizePx = figureLetterPx * ink.letterFrac;
  const half = housePx(view) / 2;
  return houses.index.within(shown).flatMap((i): LabelWish[] => {
    const mark = houses.marks[i];
    if (!mark) return [];
    const [x, y] = [screenX(view, mark.eastM), screenY(view, mark.northM)];
    const aside = half + 3 + mark.number.length * 0.29 * sizePx;
    return [
      {
        text: mark.number,
        turnRad: 0,
        sizePx,
        weight: 400,
        places: [
          [x, y + half + 2.5 + sizePx / 2],
          [x, y - half - 1.5 - sizePx / 2],
          [x + aside, y],
          [x - aside, y],
        ],
      },
    ];
  });
}

function coilLengths({ scene, view, units, shown, ink }: Picture): LabelWish[] {
  const sizePx = figureLetterPx * ink.letterFrac;
  return scene.coils.index.within(shown).flatMap((i): LabelWish[] => {
    const mark = scene.coils.marks[i];
    if (!mark) return [];
    const place = coilPlacePx(mark, view, terminalOf(mark, scene.terminals));
    const { belowX, belowY, alongX, alongY } = mark.frame;
    const under = place.heightPx / 2 + 2.5 + sizePx / 2;
    const aside = mark.away * (place.widthPx / 2 + 3 + sizePx);
    return [
      {
        text: formatLength(mark.storedM, units, "span"),
        turnRad: place.turnRad,
        sizePx,
        weight: 400,
        places: [
          [place.x + belowX * under, place.y + belowY * under],
          [place.x + alongX * aside, place.y + alongY * aside],
        ],
      },
    ];
  });
}

function otherOwners({ scene: { spans }, view, shown, ink }: Picture): LabelWish[] {
  if (zoomOf(view) < 2.2) return [];
  const sizePx = figureLetterPx * ink.letterFrac;
  return spans.index.within(shown).flatMap((i): LabelWish[] => {
    const owners = spans.otherOwners[i] ?? [];
    const frame = spans.frames[i];
    if (!frame || owners.length === 0) return [];
    const fromX = screenX(view, at(spans.fromEastM, i));
    const fromY = screenY(view, at(spans.fromNorthM, i));
    const dx = screenX(view, at(spans.toEastM, i)) - fromX;
    const dy = screenY(view, at(spans.toNorthM, i)) - fromY;
    const above = -otherWireGapPx(owners.length - 1) + 2.5 + sizePx / 2;
    const spot = (part: number) =>
      [fromX + dx * part - frame.belowX * above, fromY + dy * part - frame.belowY * above] as const;
    return [
      {
        text: owners.join(", "),
        turnRad: Math.atan2(frame.alongY, frame.alongX),
        sizePx,
        weight: 400,
        places: [spot(0.25), spot(0.75), spot(0.36)],
      },
    ];
  });
}

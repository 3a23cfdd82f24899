import { cablePath, closuresAlong, sheathToM, terminalsAlong } from "../plant/cablePath.ts";
import { hungSlackM } from "../plant/hungSlack.ts";
import { defineQuery, type Plant } from "../plant/plant.ts";
import { coilOfTerminal, sheathOpening } from "../plant/sheathOpening.ts";
import { metresPerFoot } from "../units/constants.ts";
import { countSheath, type MarkRead, type SheathCount } from "./sheathMarks.ts";
import { readingId, type Subject, subjectOf } from "./subject.ts";

/** A mark with the reading it stands in; without one while nobody read it. */
type CableMark = Omit<MarkRead, "figure"> & {
  readonly readingId: string;
  readonly subject: Subject;
  readonly what: "mark" | "markBefore" | "markAfter";
};

/** The marks of a cable held against its drawing. */
export type CableSheath = SheathCount & {
  readonly read: readonly (MarkRead & { readonly readingId: string })[];
  /** Between the first and the last mark believed, m. */
  readonly usedM: number;
  readonly drawnM: number;
  /** What is left of the reel, m; null until marks at both ends of the cable are believed. */
  readonly remainderM: number | null;
};

/** What one of the figures printed on a sheath stands for, m: sheath is marked in feet or in metres, as the route is measured. */
export function markUnitM(plant: Plant): number {
  return plant.settings().unitSystem === "us" ? metresPerFoot : 1;
}

/** Places along a cable where its sheath can be read, from the feed end: poles, and before and after each opening. */
const markPlaces = defineQuery("mark-places", (plant, cableId): readonly CableMark[] =>
  [...poleMarks(plant, cableId), ...terminalMarks(plant, cableId), ...closureMarks(plant, cableId)].sort(
    (a, b) => a.drawnM - b.drawnM,
  ),
);

/** The marks read along a cable held against its drawing. */
export const cableSheath = defineQuery("cable-sheath", (plant, cableId): CableSheath => {
  const { markToleranceFrac: toleranceFrac, markToleranceM: toleranceM } = plant.settings();
  const places = markPlaces(plant, cableId);
  const read = places.flatMap((place) => {
    const figure = plant.row("reading", place.readingId)?.value ?? null;
    return figure === null ? [] : [{ ...place, figure }];
  });
  const count = countSheath(read, { unitM: markUnitM(plant), toleranceFrac, toleranceM });
  const sum = (of: (section: SheathCount["sections"][number]) => number) =>
    count.sections.reduce((all, one) => all + of(one), 0);
  const usedM = sum((one) => one.usedM);
  const isWhole =
    count.sections.length > 0 &&
    count.sections[0]?.from === places[0]?.place &&
    count.sections.at(-1)?.to === places.at(-1)?.place;
  const remainderM = isWhole ? plant.rowOf("cable", cableId).reelLengthM - usedM : null;
  return { ...count, read, usedM, drawnM: sum((one) => one.drawnM), remainderM };
});

function placeOf(subject: Subject, what: CableMark["what"], place: string, drawnM: number): CableMark {
  return { subject, what, place, drawnM: Math.max(0, drawnM), readingId: readingId(subject, what) };
}

function poleMarks(plant: Plant, cableId: string): readonly CableMark[] {
  const { steps } = cablePath(plant, cableId);
  const [first] = steps;
  const at = (poleId: string, spanId: string, atFirst: boolean) => {
    const offsetM = atFirst ? 0 : plant.rowOf("span", spanId).lengthM;
    const drawnM = (sheathToM(plant, cableId, spanId, offsetM) ?? 0) + hungSlackM(plant, cableId, spanId, offsetM);
    return placeOf(subjectOf("pole", poleId, 0, cableId), "mark", plant.rowOf("pole", poleId).tag, drawnM);
  };
  const marks = [
    ...(first ? [at(first.inPoleId, first.spanId, !first.reversed)] : []),
    ...steps.map((step) => at(step.outPoleId, step.spanId, step.reversed)),
  ];
  // a cable that comes by a pole twice is read there once
  return [...new Map(marks.reverse().map((one) => [one.readingId, one])).values()];
}

function terminalMarks(plant: Plant, cableId: string): readonly CableMark[] {
  return terminalsAlong(plant, cableId).flatMap((id) => {
    const [opening, coil] = [sheathOpening(plant, id), coilOfTerminal(plant, id)];
    if (!opening || coil?.cableId !== cableId) return [];
    const hungM = hungSlackM(plant, cableId, coil.spanId, coil.offsetM);
    return openingMarks(subjectOf("terminal", id), plant.rowOf("terminal", id).name, [
      opening.fromM + hungM,
      opening.toM + hungM,
    ]);
  });
}

function closureMarks(plant: Plant, cableId: string): readonly CableMark[] {
  const halfM = plant.settings().openingM / 2;
  return closuresAlong(plant, cableId).flatMap((id) => {
    const { name, spanId, offsetM } = plant.rowOf("closure", id);
    const alongM = sheathToM(plant, cableId, spanId, offsetM);
    if (alongM === null) return [];
    const atM = alongM + hungSlackM(plant, cableId, spanId, offsetM);
    return openingMarks(subjectOf("closure", id), name, [atM - halfM, atM + halfM]);
  });
}

function openingMarks(subject: Subject, name: string, [fromM, toM]: readonly [number, number]): readonly CableMark[] {
  return [
    placeOf(subject, "markBefore", `${name} before the opening`, fromM),
    placeOf(subject, "markAfter", `${name} after the opening`, toM),
  ];
}

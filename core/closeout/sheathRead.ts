import type { Row } from "../model/tables.ts";
import { cablePath, closuresAlong, sheathToM, stationM, terminalsAlong } from "../plant/cablePath.ts";
import { hungSlackM } from "../plant/hungSlack.ts";
import { defineQuery, type Plant } from "../plant/plant.ts";
import { coilOfTerminal, sheathOpening } from "../plant/sheathOpening.ts";
import { metresPerFoot } from "../units/constants.ts";
import { countSheath, type MarkRead, type SheathCount } from "./sheathMarks.ts";
import { readingId, type Subject, subjectOf } from "./subject.ts";

/** A mark with the reading it stands in; without one while nobody read it. */
export type CableMark = Omit<MarkRead, "figure"> & {
  readonly readingId: string;
  readonly subject: Subject;
  readonly what: "mark" | "markBefore" | "markAfter";
  /** Along the route from the feed end, coils not counted, m. */
  readonly stationM: number;
};

/** The marks of a cable held against its drawing. */
export type CableSheath = SheathCount & {
  readonly read: readonly (MarkRead & CableMark)[];
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

/** The cable whose sheath a mark was read off; null for any other reading, and where the thing it was read at is gone. */
export function cableOfMark(plant: Plant, { what, kind, subjectId, alongId }: Row<"reading">): string | null {
  if (what !== "mark" && what !== "markBefore" && what !== "markAfter") return null;
  if (kind === "terminal" || kind === "closure") return plant.row(kind, subjectId)?.cableId ?? null;
  return plant.row("cable", alongId)?.id ?? null;
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

function markAt(
  subject: Subject,
  what: CableMark["what"],
  place: string,
  { drawnM, stationM: alongM }: Pick<CableMark, "drawnM" | "stationM">,
): CableMark {
  return { subject, what, place, drawnM: Math.max(0, drawnM), stationM: alongM, readingId: readingId(subject, what) };
}

function poleMarks(plant: Plant, cableId: string): readonly CableMark[] {
  const { steps } = cablePath(plant, cableId);
  const [first] = steps;
  const at = (poleId: string, spanId: string, atFirst: boolean) => {
    const offsetM = atFirst ? 0 : plant.rowOf("span", spanId).lengthM;
    const drawnM = (sheathToM(plant, cableId, spanId, offsetM) ?? 0) + hungSlackM(plant, cableId, spanId, offsetM);
    const along = { drawnM, stationM: stationM(plant, cableId, spanId, offsetM) ?? 0 };
    return markAt(subjectOf("pole", poleId, 0, cableId), "mark", plant.rowOf("pole", poleId).tag, along);
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
    const [fromM, toM] = [opening.fromM + hungM, opening.toM + hungM];
    const along = { fromM, toM, stationM: stationM(plant, cableId, coil.spanId, coil.offsetM) ?? 0 };
    return openingMarks(subjectOf("terminal", id), plant.rowOf("terminal", id).name, along);
  });
}

function closureMarks(plant: Plant, cableId: string): readonly CableMark[] {
  const halfM = plant.settings().openingM / 2;
  return closuresAlong(plant, cableId).flatMap((id) => {
    const { name, spanId, offsetM } = plant.rowOf("closure", id);
    const sheathM = sheathToM(plant, cableId, spanId, offsetM);
    if (sheathM === null) return [];
    const atM = sheathM + hungSlackM(plant, cableId, spanId, offsetM);
    const along = { fromM: atM - halfM, toM: atM + halfM, stationM: stationM(plant, cableId, spanId, offsetM) ?? 0 };
    return openingMarks(subjectOf("closure", id), name, along);
  });
}

type Opened = { readonly fromM: number; readonly toM: number; readonly stationM: number };

function openingMarks(subject: Subject, name: string, { fromM, toM, stationM: atM }: Opened): readonly CableMark[] {
  return [
    markAt(subject, "markBefore", `${name} before the opening`, { drawnM: fromM, stationM: atM }),
    markAt(subject, "markAfter", `${name} after the opening`, { drawnM: toM, stationM: atM }),
  ];
}

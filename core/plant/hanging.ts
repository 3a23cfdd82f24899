import { defineQuery, type Plant } from "./plant.ts";

/** Something hung on the strand of a span. */
export type Hung = {
  readonly table: "terminal" | "slack" | "closure";
  readonly id: string;
  /** What people call it. */
  readonly name: string;
  /** Middle of it from the span's first pole, m. */
  readonly offsetM: number;
  /** Half its length along the strand, m; 0 for coils and closures, which have no length in the catalogue. */
  readonly halfM: number;
  /** The terminal it is or waits for; null for a storage coil and a closure. */
  readonly terminalId: string | null;
};

/** Everything hung in a span, from its first pole. */
export const hungInSpan = defineQuery("hung-in-span", (plant, spanId): readonly Hung[] => {
  const terminals = plant.where("terminal", "spanId", spanId).map((id): Hung => {
    const { name, offsetM, terminalModelId } = plant.rowOf("terminal", id);
    const halfM = plant.rowOf("terminalModel", terminalModelId).lengthM / 2;
    return { table: "terminal", id, name: `terminal ${name}`, offsetM, halfM, terminalId: id };
  });
  const coils = plant.where("slack", "spanId", spanId).map((id): Hung => {
    const { cableId, offsetM, kind, terminalId } = plant.rowOf("slack", id);
    const name = `a coil of cable ${plant.rowOf("cable", cableId).name}`;
    return { table: "slack", id, name, offsetM, halfM: 0, terminalId: kind === "access" ? terminalId : null };
  });
  const closures = plant.where("closure", "spanId", spanId).map((id): Hung => {
    const { name, offsetM } = plant.rowOf("closure", id);
    return { table: "closure", id, name: `closure ${name}`, offsetM, halfM: 0, terminalId: null };
  });
  return [...terminals, ...coils, ...closures].sort((a, b) => a.offsetM - b.offsetM || (a.id < b.id ? -1 : 1));
});

/** Free strand between two things, end to end, m; negative where they overlap. */
export function gapBetweenM(a: Hung, b: Hung): number {
  return Math.abs(b.offsetM - a.offsetM) - a.halfM - b.halfM;
}

/** Whether two things are meant to hang together: a terminal and the coil that waits for its opening, or its coils. */
export function belongTogether(a: Hung, b: Hung): boolean {
  return a.terminalId !== null && a.terminalId === b.terminalId;
}

/** Whether something would hang clear of everything else in a span by the company's gap, inside the span. */
export function hangsFree(plant: Plant, spanId: string, hung: Hung): boolean {
  const { hangingGapM } = plant.settings();
  const { lengthM } = plant.rowOf("span", spanId);
  if (!(hung.offsetM - hung.halfM > 0 && hung.offsetM + hung.halfM < lengthM)) return false;
  return hungInSpan(plant, spanId).every(
    (one) => one.id === hung.id || belongTogether(one, hung) || gapBetweenM(one, hung) >= hangingGapM,
  );
}

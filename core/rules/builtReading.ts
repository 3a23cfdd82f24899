import type { BuiltKind, ReadingKind } from "../model/closeoutRows.ts";
import type { Row } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/** What changing the design to what was built is called. */
export const drawAsBuilt = "Draw it as built";

/** What changing the design to what was built is called where several things move together. */
export function drawAllAsBuilt(count: number): string {
  return count === 2 ? "Draw both as built" : `Draw all ${count} as built`;
}

type FigureRead = Row<"reading"> & { readonly value: number };

/** A reading where it is a figure of this sort, of a thing that is there; null for any other. */
export function figureRead(
  plant: Plant,
  readingId: string,
  { kind, what }: { readonly kind: Exclude<BuiltKind, "port" | "bond">; readonly what: ReadingKind },
): FigureRead | null {
  const reading = plant.rowOf("reading", readingId);
  const { value, subjectId } = reading;
  if (value === null || reading.kind !== kind || reading.what !== what || !plant.row(kind, subjectId)) return null;
  return { ...reading, value };
}

import type { Row } from "../model/tables.ts";
import { defineQuery, type Plant } from "../plant/plant.ts";
import { byText } from "../plant/sorting.ts";
import { saysSame } from "./packet/readingText.ts";

/** One thing that is said of a reading, and who says it. */
export type DisputeSide = {
  /** Where a person took it down or decided for it; null where crews alone say it. */
  readonly standing: Row<"reading"> | null;
  /** Of crews, in the order they were signed. */
  readonly rivals: readonly Row<"rivalReading">[];
};

/** Readings of one thing that differ, to be decided between: what stands first, else in the order they were signed. */
export type Dispute = { readonly readingId: string; readonly sides: readonly DisputeSide[] };

/** What is in dispute of a reading; null where nobody says otherwise than what stands. */
export const disputeOf = defineQuery("dispute", (plant, readingId): Dispute | null => {
  const standing = plant.row("reading", readingId) ?? null;
  const rivals = plant
    .where("rivalReading", "readingId", readingId)
    .map((id) => plant.rowOf("rivalReading", id))
    .sort((a, b) => byText(a.atIso, b.atIso) || byText(a.id, b.id));
  const sides: DisputeSide[] = standing ? [{ standing, rivals: rivals.filter((one) => saysSame(one, standing)) }] : [];
  for (const rival of rivals)
    if (!sides.some((side) => saysSame(side.standing ?? side.rivals[0] ?? null, rival)))
      sides.push({ standing: null, rivals: rivals.filter((one) => saysSame(one, rival)) });
  return rivals.length === 0 || (standing && sides.length === 1) ? null : { readingId, sides };
});

/** Every reading in dispute, by its id. */
export function disputes(plant: Plant): readonly Dispute[] {
  const ids = new Set(plant.all("rivalReading").map((id) => plant.rowOf("rivalReading", id).readingId));
  return [...ids].sort(byText).flatMap((id) => disputeOf(plant, id) ?? []);
}

/** What a side says: the row that says it. */
export function saidBy({ standing, rivals }: DisputeSide): Row<"reading"> | Row<"rivalReading"> {
  const said = standing ?? rivals[0];
  if (!said) throw new Error("a side nobody takes");
  return said;
}

import type { Point } from "../../plant/geometry.ts";
import type { Plant } from "../../plant/plant.ts";
import { subjectPlace } from "../../rules/finding.ts";
import type { ChangeLine } from "./told.ts";

/** A change with where on the ground it shows; null for what has no place, such as a standard. */
export type PlacedChange = ChangeLine & { readonly at: Point | null };

/** Where each change shows: a drop at its house, what is gone where it was. */
export function placedChanges(
  plant: Plant,
  before: Plant | null,
  lines: readonly ChangeLine[],
): readonly PlacedChange[] {
  return lines.map((line) => ({ ...line, at: placeOf(line.isGone ? (before ?? plant) : plant, line) }));
}

function placeOf(plant: Plant, { table, id }: ChangeLine): Point | null {
  const drop = table === "drop" ? plant.row("drop", id) : undefined;
  return drop
    ? subjectPlace(plant, { table: "livingUnit", id: drop.livingUnitId })
    : subjectPlace(plant, { table, id });
}

import type { Revision } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { byName } from "../plant/sorting.ts";

/** Revisions issued, oldest first. */
export function revisionsInOrder(plant: Plant): readonly Revision[] {
  return [...plant.route().revision.values()].sort((a, b) => a.number - b.number || byName(a.letter, b.letter));
}

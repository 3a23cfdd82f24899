import type { Revision } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { byName, byText } from "./sorting.ts";

/** Revisions issued, oldest first. */
export function revisionsInOrder(plant: Plant): readonly Revision[] {
  return [...plant.route().revision.values()].sort(
    (a, b) => byText(a.dateIso, b.dateIso) || byName(a.letter, b.letter),
  );
}

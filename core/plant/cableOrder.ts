import type { Cable } from "../model/tables.ts";
import type { Plant } from "./plant.ts";
import { byName, byText } from "./sorting.ts";

/** The cables of a route as they are drawn: those from the hub first, then by name. */
export function cablesInOrder(plant: Plant): readonly Cable[] {
  return plant
    .all("cable")
    .map((id) => plant.rowOf("cable", id))
    .sort(
      (a, b) =>
        Number(a.fromClosureId !== null) - Number(b.fromClosureId !== null) ||
        byName(a.name, b.name) ||
        byText(a.id, b.id),
    );
}

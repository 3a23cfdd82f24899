import { stationM } from "../plant/cablePath.ts";
import type { Plant } from "../plant/plant.ts";
import { compareNatural } from "./order.ts";

/**
 * Ids of the cables from the hub outwards: those that come from the hub, then those spliced on them, and so on; along one
 * cable by where the splice is. A cable whose splices lead in a circle is left out.
 */
export function cablesFromHub(plant: Plant): readonly string[] {
  const roots = plant.where("cable", "fromClosureId", "");
  const ordered = [...roots].sort(compareNatural);
  for (let index = 0; index < ordered.length; index += 1) {
    const cableId = ordered[index];
    if (cableId !== undefined) ordered.push(...lateralsOf(plant, cableId));
  }
  return ordered;
}

/** Ids of the cables spliced on a cable, by where along it. */
export function lateralsOf(plant: Plant, cableId: string): readonly string[] {
  return plant
    .where("closure", "cableId", cableId)
    .map((id) => plant.rowOf("closure", id))
    .map((closure) => ({ id: closure.id, at: stationM(plant, cableId, closure.spanId, closure.offsetM) ?? 0 }))
    .sort((a, b) => a.at - b.at || compareNatural(a.id, b.id))
    .flatMap((closure) => [...plant.where("cable", "fromClosureId", closure.id)].sort(compareNatural));
}

/** The cable a cable is spliced on; null where it comes from the hub. */
export function parentCableId(plant: Plant, cableId: string): string | null {
  const { fromClosureId } = plant.rowOf("cable", cableId);
  return fromClosureId === null ? null : plant.rowOf("closure", fromClosureId).cableId;
}

import { allocateFibers } from "../fiber/allocateFibers.ts";
import type { TubedCable } from "../fiber/tubes.ts";
import type { CableType } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/** A cable type with the company's spares and the fibers in use, as fibers are given out of it. */
export function tubedCable(plant: Plant, cableTypeId: string, taken: ReadonlySet<number>): TubedCable {
  const { fiberCount, fibersPerTube } = plant.rowOf("cableType", cableTypeId);
  return { fiberCount, fibersPerTube, spareCount: plant.settings().spareFiberPerTubeCount, taken };
}

/** Smallest catalogue cable whose tubes hold these openings in order, spares kept; null where none does. */
export function smallestCableFor(
  plant: Plant,
  openings: readonly number[],
  taken: ReadonlySet<number> = new Set(),
): CableType | null {
  const highest = Math.max(0, ...taken);
  const types = plant
    .all("cableType")
    .map((id) => plant.rowOf("cableType", id))
    .filter((one) => one.fiberCount >= highest)
    .sort((a, b) => a.fiberCount - b.fiberCount || a.costPerM - b.costPerM);
  return types.find((type) => allocateFibers(tubedCable(plant, type.id, taken), openings) !== null) ?? null;
}

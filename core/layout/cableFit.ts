import type { CableType } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { openFiberTaker } from "./fiberTaker.ts";

/** Smallest catalogue cable whose tubes hold these openings in order, spares kept; null where none does. */
export function smallestCableFor(
  plant: Plant,
  openings: readonly number[],
  taken: ReadonlySet<number> = new Set(),
): CableType | null {
  const { spareFiberPerTubeCount } = plant.settings();
  const highest = Math.max(0, ...taken);
  const types = plant
    .all("cableType")
    .map((id) => plant.rowOf("cableType", id))
    .filter((one) => one.fiberCount >= highest)
    .sort((a, b) => a.fiberCount - b.fiberCount || a.costPerM - b.costPerM);
  const fits = (type: CableType) => {
    const taker = openFiberTaker(type.fiberCount, type.fibersPerTube, spareFiberPerTubeCount, taken);
    return openings.every((count) => taker.take(count) !== null);
  };
  return types.find(fits) ?? null;
}

import { rowDifferences } from "../layout/rowSet.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { CableRun } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/** Steps of a cable from its feed end. */
export function runsOf(plant: Plant, cableId: string): readonly CableRun[] {
  return plant
    .where("cableRun", "cableId", cableId)
    .map((id) => plant.rowOf("cableRun", id))
    .sort((a, b) => a.sequence - b.sequence);
}

/** The edit that gives a cable another way: these steps in this order, numbered anew from its feed end. */
export function rerunRows(plant: Plant, cableId: string, steps: readonly CableRun[]): RowChange[] {
  const wanted = steps.map((one, i) => ({ ...one, sequence: i + 1 }));
  return rowDifferences("cableRun", runsOf(plant, cableId), wanted);
}

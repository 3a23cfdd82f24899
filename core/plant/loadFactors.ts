import type { LineSurface } from "../model/clearanceRows.ts";
import type { WindyCase } from "../model/loadRows.ts";
import type { LoadFactor } from "../model/tables.ts";
import type { Plant } from "./plant.ts";

/** What a load is multiplied with, and the row that says so; 1 and no row where the strength set has none. */
export type FactorOfLoad = { readonly factor: number; readonly row: LoadFactor | null };

/** The factor of a load in a case by the chosen strength set: its largest row. */
export function loadFactorFor(plant: Plant, load: LoadFactor["load"], condition: WindyCase): FactorOfLoad {
  const { strengthSetId } = plant.settings();
  const [row = null] = plant
    .whereAll("loadFactor", { strengthSetId, load, condition })
    .map((id) => plant.rowOf("loadFactor", id))
    .sort((a, b) => b.factor - a.factor);
  return { factor: row?.factor ?? 1, row };
}

const crossedInGrade: ReadonlySet<LineSurface> = new Set([
  "road",
  "highLoadRoad",
  "limitedAccessRoad",
  "stateHighway",
  "rail",
  "trolley",
  "sailingWater20",
  "sailingWater200",
  "sailingWater2000",
  "sailingWater",
]);

/**
 * The factor of wind on spans: that at crossings where the set has one and a span passes over a road, a railroad or sailing water.
 * Which crossings count is our reading; the document says no more than "at crossings".
 */
export function windFactorFor(plant: Plant, spanIds: readonly string[], condition: WindyCase): FactorOfLoad {
  const crosses = spanIds.some((spanId) =>
    plant.where("crossing", "spanId", spanId).some((id) => crossedInGrade.has(plant.rowOf("crossing", id).surface)),
  );
  const atCrossing = loadFactorFor(plant, "windAtCrossing", condition);
  return crosses && atCrossing.row ? atCrossing : loadFactorFor(plant, "wind", condition);
}

import { type Point, planeDistanceM } from "./geometry.ts";
import { defineQuery, type Plant } from "./plant.ts";
import { terminalHang } from "./terminalView.ts";

/** Horizontal run of a drop from the terminal to the living unit, m. What the reach limit is compared with. */
export const dropRunM = defineQuery("drop-run", (plant, dropId): number => {
  const { terminalId, livingUnitId } = plant.rowOf("drop", dropId);
  return runToM(plant, livingUnitId, terminalId);
});

/** Horizontal run that a drop to a living unit has or would have from a terminal, m. */
export function runToM(plant: Plant, livingUnitId: string, terminalId: string): number {
  return planeDistanceM(terminalHang(plant, terminalId), plant.rowOf("livingUnit", livingUnitId));
}

/** Drop cable to cut: the run and the company's allowance for the house side, m. */
export const dropCutM = defineQuery(
  "drop-cut",
  (plant, dropId): number => dropRunM(plant, dropId) + plant.settings().dropAllowanceM,
);

/** The two ends of a drop in plan. */
export const dropEnds = defineQuery("drop-ends", (plant, dropId): { readonly from: Point; readonly to: Point } => {
  const drop = plant.rowOf("drop", dropId);
  return { from: terminalHang(plant, drop.terminalId), to: plant.rowOf("livingUnit", drop.livingUnitId) };
});

/** Ids of the drops that serve a living unit, sorted. */
export const dropsOfUnit = defineQuery("drops-of-unit", (plant, livingUnitId): readonly string[] =>
  plant.where("drop", "livingUnitId", livingUnitId),
);

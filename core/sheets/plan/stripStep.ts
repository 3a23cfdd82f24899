import { type Point, planeDistanceM } from "../../plant/geometry.ts";
import type { Plant } from "../../plant/plant.ts";
import type { Step } from "../../plant/spanRuns.ts";
import type { UnitAlong } from "./unitsBySpan.ts";

/** A step with the part of it that one strip shows. */
export type StripStep = Step & { readonly startFrac: number; readonly endFrac: number };

/** Living units by the span they are drawn with. */
export type UnitMap = ReadonlyMap<string, readonly UnitAlong[]>;

/** True where a place of a span lies on the part that a strip shows. */
export function shows(plant: Plant, step: StripStep, offsetM: number): boolean {
  const frac = fracAlong(plant, step, offsetM);
  return frac >= step.startFrac && (frac < step.endFrac || step.endFrac === 1);
}

/** A place of a span as a part of a step's way. */
function fracAlong(plant: Plant, step: Step, offsetM: number): number {
  const frac = offsetM / step.lengthM;
  return plant.rowOf("span", step.spanId).fromPoleId === step.fromPoleId ? frac : 1 - frac;
}

/** Ids of the living units drawn with a step. */
export function unitsOn(plant: Plant, step: StripStep, units: UnitMap): readonly string[] {
  return (units.get(step.spanId) ?? []).filter((one) => shows(plant, step, one.offsetM)).map((one) => one.id);
}

/**
 * Places of a strip on the ground: its line and its living units.
 *
 * @param farthestM  living units farther from their span than this are left out: they are drawn at the sheet's edge
 */
export function contentPoints(
  plant: Plant,
  steps: readonly StripStep[],
  units: UnitMap,
  farthestM: number,
): readonly Point[] {
  const near = steps.flatMap((step) =>
    unitsOn(plant, step, units).filter((id) => offStepM(plant, step, id) <= farthestM),
  );
  return [...linePoints(plant, steps), ...near.map((id) => plant.rowOf("livingUnit", id))];
}

/** Distance of a living unit from the line through a step, m. */
export function offStepM(plant: Plant, step: Step, unitId: string): number {
  const [a, b] = [plant.rowOf("pole", step.fromPoleId), plant.rowOf("pole", step.toPoleId)];
  const unit = plant.rowOf("livingUnit", unitId);
  const lengthM = planeDistanceM(a, b);
  const cross = (b.eastM - a.eastM) * (unit.northM - a.northM) - (b.northM - a.northM) * (unit.eastM - a.eastM);
  return lengthM === 0 ? planeDistanceM(unit, a) : Math.abs(cross) / lengthM;
}

/** Places of a strip's line on the ground, cuts and poles. */
export function linePoints(plant: Plant, steps: readonly StripStep[]): readonly Point[] {
  return steps.flatMap((step) => [alongStep(plant, step, step.startFrac), alongStep(plant, step, step.endFrac)]);
}

/** A point of a step in plan, by its part of the way. */
export function alongStep(plant: Plant, step: Step, frac: number): Point {
  const [a, b] = [plant.rowOf("pole", step.fromPoleId), plant.rowOf("pole", step.toPoleId)];
  return { eastM: a.eastM + (b.eastM - a.eastM) * frac, northM: a.northM + (b.northM - a.northM) * frac };
}

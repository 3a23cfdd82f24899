import type { LivingUnit } from "../model/tables.ts";
import { type Point, planeDistanceM } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { facePlan } from "../plant/terminalView.ts";

/**
 * Which port serves which unit of one terminal.
 *
 * Units are taken as one looks from the back of the span to its front, by the angle between the strand and the drop, so that
 * drops leave the face in the order in which they leave the strand and none crosses another; of two at one angle the nearer
 * comes first. The lowest free ports are used, from the face's left to its right, and spares stay at the end.
 *
 * @param bearingRad  direction of the span from its first pole, counter-clockwise from east
 * @param takenPorts  ports that decided drops hold
 * @returns ports from 1, one a unit; units beyond the last free port get none
 */
export function assignPorts(
  plant: Plant,
  terminalModelId: string,
  at: Point,
  bearingRad: number,
  units: readonly LivingUnit[],
  takenPorts: ReadonlySet<number>,
): { readonly livingUnitId: string; readonly port: number }[] {
  const free = facePlan(plant, terminalModelId)
    .filter((place) => !takenPorts.has(place.port))
    .slice(0, units.length)
    .sort((a, b) => a.along - b.along || a.rank - b.rank);
  return units
    .map((unit) => ({ unit, backRad: fromAheadRad(at, bearingRad, unit), runM: planeDistanceM(at, unit) }))
    .sort((a, b) => b.backRad - a.backRad || a.runM - b.runM || (a.unit.id < b.unit.id ? -1 : 1))
    .flatMap(({ unit }, position) => {
      const place = free[position];
      return place ? [{ livingUnitId: unit.id, port: place.port }] : [];
    });
}

/** Angle between the way ahead along the strand and a unit, either side alike, to a millionth of a radian; 0 ahead, pi behind. */
function fromAheadRad(at: Point, bearingRad: number, unit: Point): number {
  const turn = Math.atan2(unit.northM - at.northM, unit.eastM - at.eastM) - bearingRad;
  return Math.round(Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) * 1e6) / 1e6;
}

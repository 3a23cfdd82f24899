import { linearAssignment } from "../assignment/linearAssignment.ts";
import type { LivingUnit } from "../model/tables.ts";
import { type Point, planeDistanceM } from "../plant/geometry.ts";
import type { Plant } from "../plant/plant.ts";
import { type FacePlace, facePlan } from "../plant/terminalView.ts";

/** A port that a decided drop holds, and where its unit stands. */
export type HeldPort = { readonly port: number; readonly unit: Point };

/** One crossing weighs more than all port numbers of a face together. */
const crossingCost = 1e6;

/**
 * Which port serves which unit of one terminal.
 *
 * Units are taken as one looks from the back of the span to its front, by the angle between the strand and the drop, so that
 * drops leave the face in the order in which they leave the strand and none crosses another; of two at one angle the nearer
 * comes first. Free ports are chosen so that the fewest decided drops are crossed, then the lowest, so that spares stay at the end;
 * they are used from the face's left to its right.
 *
 * @param bearingRad  direction of the span from its first pole, counter-clockwise from east
 * @param held        ports that decided drops hold
 * @param reserved    ports that nobody may be given
 * @returns ports from 1, one a unit; units beyond the last free port get none
 */
export function assignPorts(
  plant: Plant,
  terminalModelId: string,
  at: Point,
  bearingRad: number,
  units: readonly LivingUnit[],
  held: readonly HeldPort[],
  reserved: ReadonlySet<number>,
): { readonly livingUnitId: string; readonly port: number }[] {
  const face = facePlan(plant, terminalModelId);
  const taken = new Set(held.map((one) => one.port));
  const free = face.filter((place) => !taken.has(place.port) && !reserved.has(place.port));
  const ordered = units
    .map((unit) => ({ unit, backRad: fromAheadRad(at, bearingRad, unit), runM: planeDistanceM(at, unit) }))
    .sort((a, b) => b.backRad - a.backRad || a.runM - b.runM || (a.unit.id < b.unit.id ? -1 : 1))
    .slice(0, free.length);
  const decided = held.flatMap(({ port, unit }) => {
    const place = face[port - 1];
    return place ? [{ place, backRad: fromAheadRad(at, bearingRad, unit) }] : [];
  });
  const costs = ordered.map(({ backRad }) =>
    free.map((place) => place.port + crossingCost * decided.filter((one) => crosses(one, { place, backRad })).length),
  );
  const chosen = linearAssignment(costs);
  if (chosen.kind !== "assigned") throw new Error("there are as many free ports as units, and every pair is allowed");
  // Once the ports are chosen, handing them out by angle crosses no more decided drops than any other way of handing them out.
  const places = chosen.columns
    .flatMap((column) => free[column] ?? [])
    .sort((a, b) => a.along - b.along || a.rank - b.rank);
  return ordered.flatMap(({ unit }, position) => {
    const place = places[position];
    return place ? [{ livingUnitId: unit.id, port: place.port }] : [];
  });
}

type Leaving = { readonly place: FacePlace; readonly backRad: number };

/** Whether two drops cross: the one farther back along the strand leaves the face farther to the right. */
function crosses(a: Leaving, b: Leaving): boolean {
  return (a.backRad - b.backRad) * (a.place.along - b.place.along) > 0;
}

/** Angle between the way ahead along the strand and a unit, either side alike, to a millionth of a radian; 0 ahead, pi behind. */
function fromAheadRad(at: Point, bearingRad: number, unit: Point): number {
  const turn = Math.atan2(unit.northM - at.northM, unit.eastM - at.eastM) - bearingRad;
  return Math.round(Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))) * 1e6) / 1e6;
}

import type { Problem } from "./problem.ts";
import { unservedWords } from "./words.ts";

/** A unit no layout found serves, and why. */
export type Unserved = { readonly unit: number; readonly reason: string };

/** The units that no point could serve even by itself. */
export function hopelessUnits(problem: Problem): Unserved[] {
  const hopeless: Unserved[] = [];
  problem.demand.forEach((demand, unit) => {
    let most = -1;
    for (let arc = problem.firstArc[unit]; arc < problem.firstArc[unit + 1]; arc += 1)
      most = Math.max(most, mostAt(problem, problem.arcPoint[arc]));
    if (most === -1) hopeless.push({ unit, reason: unservedWords.noPoint() });
    else if (most < demand) hopeless.push({ unit, reason: unservedWords.tooLarge(demand, most) });
  });
  return hopeless;
}

/**
 * Why a unit was left out of a layout: too little capacity within reach, or nothing proven.
 *
 * From the unit over its points to the units on them, over their points, and so on: a set of units all of whose points are within the
 * set of points. Where the units ask for more than the points hold, no layout serves them all.
 *
 * @source marriage theorem, Hall 1935, with capacities
 */
export function whyLeftOut(problem: Problem, pointOf: Int32Array, unit: number): Unserved {
  const { firstArc, arcPoint, demand } = problem;
  const onPoint = unitsByPoint(pointOf);
  const units = new Set([unit]);
  const points = new Set<number>();
  for (const one of units)
    for (let arc = firstArc[one]; arc < firstArc[one + 1]; arc += 1) {
      points.add(arcPoint[arc]);
      for (const other of onPoint.get(arcPoint[arc]) ?? []) units.add(other);
    }
  let asked = 0;
  for (const one of units) asked += demand[one];
  let held = 0;
  for (const point of points) held += mostAt(problem, point);
  if (asked <= held) return { unit, reason: unservedWords.doesNotFit() };
  return { unit, reason: unservedWords.noCapacity(units.size, asked, points.size, held) };
}

function unitsByPoint(pointOf: Int32Array): ReadonlyMap<number, readonly number[]> {
  const onPoint = new Map<number, number[]>();
  pointOf.forEach((point, unit) => {
    if (point === -1) return;
    const there = onPoint.get(point);
    if (there) there.push(unit);
    else onPoint.set(point, [unit]);
  });
  return onPoint;
}

function mostAt({ points }: Problem, point: number): number {
  return points[point].modules.at(-1)?.capacity ?? 0;
}

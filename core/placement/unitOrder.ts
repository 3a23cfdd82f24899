import type { Problem } from "./problem.ts";

/**
 * The units in order along the strand, read off their drops: by the cheapest point, and among those of one point by how much cheaper
 * the point after is than the point before.
 *
 * Where lots lie at equal setbacks this is the order of their stations.
 */
export function unitOrderOf(problem: Problem): Int32Array {
  const unitCount = problem.demand.length;
  const place = new Float64Array(unitCount);
  for (let unit = 0; unit < unitCount; unit += 1) place[unit] = placeOf(problem, unit);
  return Int32Array.from({ length: unitCount }, (_, unit) => unit).sort((a, b) => place[a] - place[b] || a - b);
}

/** Number of the cheapest point, plus up to a half either way. */
function placeOf({ firstArc, arcPoint, arcCost }: Problem, unit: number): number {
  const first = firstArc[unit];
  const last = firstArc[unit + 1] - 1;
  if (last < first) return -1;
  let least = first;
  for (let arc = first + 1; arc <= last; arc += 1) if (arcCost[arc] < arcCost[least]) least = arc;
  const point = arcPoint[least];
  const before = least > first && arcPoint[least - 1] === point - 1 ? arcCost[least - 1] - arcCost[least] : null;
  const after = least < last && arcPoint[least + 1] === point + 1 ? arcCost[least + 1] - arcCost[least] : null;
  if (before === null) return after === null ? point : point - 0.25;
  if (after === null) return point + 0.25;
  return before + after === 0 ? point : point + (before - after) / (2 * (before + after));
}

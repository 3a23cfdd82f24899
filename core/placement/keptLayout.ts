import { costOf, openField } from "./field.ts";
import type { Part } from "./part.ts";
import type { Placement } from "./problem.ts";
import { seatLeftOut } from "./seatLeftOut.ts";
import { slack } from "./strandProgram.ts";

/** A layout with its cost. */
export type KeptLayout = Omit<Placement, "bound">;

/**
 * A former layout made to fit: who still reaches the point it was on stays there while there is room, all others are seated where that
 * costs least.
 *
 * @param kept  by unit of the whole the point of the whole it was on; -1 where there was none
 * @returns the layout of the part
 */
export function keptLayout({ problem, points, units }: Part, kept: Int32Array): KeptLayout {
  const field = openField(problem);
  const load = new Int32Array(field.pointCount);
  const pointOf = new Int32Array(field.unitCount).fill(-1);
  for (let unit = 0; unit < field.unitCount; unit += 1)
    for (let arc = problem.firstArc[unit]; arc < problem.firstArc[unit + 1]; arc += 1) {
      const point = problem.arcPoint[arc];
      if (points[point] !== kept[units[unit]] || load[point] + problem.demand[unit] > field.capacity[point]) continue;
      load[point] += problem.demand[unit];
      pointOf[unit] = point;
    }
  seatLeftOut(field, pointOf);
  return { pointOf, cost: costOf(field, pointOf) };
}

/** What a search has, or the kept layout where that costs no more: of two that cost the same the kept one stays. */
export function orKept(kept: KeptLayout | null, found: Placement): Placement {
  if (kept === null || kept.cost > found.cost + slack(found.cost)) return found;
  return { ...kept, bound: found.bound >= kept.cost - slack(kept.cost) ? kept.cost : found.bound };
}

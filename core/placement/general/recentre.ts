import type { Ground } from "./ground.ts";
import { finedHolding, type Layout, shift } from "./layout.ts";

/**
 * Moves all units of a point together to the empty point that holds them and where they cost least, if that is less than here. A point
 * that takes over becomes usable, the one it empties no longer.
 *
 * @returns whether they were moved
 */
export function recentre(ground: Ground, layout: Layout, fine: number, point: number): boolean {
  const { graph, usable } = ground;
  if (layout.count[point] === 0) return false;
  let least = groupCost(ground, layout, fine, point, point, Number.POSITIVE_INFINITY) - 1e-7;
  let best = -1;
  for (let other = 0; other < graph.pointCount; other += 1) {
    if (layout.count[other] > 0) continue;
    if (graph.capacity[other] < layout.load[point]) continue;
    const cost = groupCost(ground, layout, fine, point, other, least);
    if (cost >= least) continue;
    least = cost;
    best = other;
  }
  if (best < 0) return false;
  for (let unit = layout.firstOn[point]; unit >= 0; unit = layout.firstOn[point]) {
    shift(graph, layout, unit, ground.arcAt(unit, best));
  }
  usable[point] = 0;
  usable[best] = 1;
  return true;
}

/** Recentres each point. */
export function recentreAll(ground: Ground, layout: Layout, fine: number): boolean {
  let any = false;
  for (let point = 0; point < ground.graph.pointCount; point += 1) {
    if (recentre(ground, layout, fine, point)) any = true;
  }
  return any;
}

/** Cost of the units of one point on another; infinite where one of them may not go or it is `most` or more. */
function groupCost(ground: Ground, layout: Layout, fine: number, point: number, on: number, most: number): number {
  const { graph, barred, fixedArc, effort } = ground;
  let cost = finedHolding(graph, fine, on, layout.load[point]);
  for (let unit = layout.firstOn[point]; unit >= 0; unit = layout.nextOn[unit]) {
    if (cost >= most) return Number.POSITIVE_INFINITY;
    effort.moves += 1;
    const arc = ground.arcAt(unit, on);
    if (arc < 0) return Number.POSITIVE_INFINITY;
    if (on !== point && (barred[arc] === 1 || fixedArc[unit] >= 0)) return Number.POSITIVE_INFINITY;
    cost += graph.arcCost[arc];
  }
  return cost;
}

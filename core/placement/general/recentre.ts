import type { Ground } from "./ground.ts";
import { finedHolding, type Layout, shift } from "./layout.ts";

/**
 * Moves all units of a point together to an empty point that holds them and where they cost less, as long as there is such a move. A point that takes
 * over becomes usable, the one it empties no longer.
 *
 * @returns whether any was made
 */
export function recentre(ground: Ground, layout: Layout, fine: number): boolean {
  const { graph, usable } = ground;
  let any = false;
  for (let point = 0; point < graph.pointCount; point += 1) {
    if (layout.count[point] === 0) continue;
    const present = groupCost(ground, layout, fine, point, point);
    let least = present - 1e-7;
    let best = -1;
    for (let other = 0; other < graph.pointCount; other += 1) {
      if (layout.count[other] > 0) continue;
      if (graph.capacity[other] < layout.load[point]) continue;
      const cost = groupCost(ground, layout, fine, point, other);
      if (cost >= least) continue;
      least = cost;
      best = other;
    }
    if (best < 0) continue;
    for (let unit = layout.firstOn[point]; unit >= 0; unit = layout.firstOn[point]) {
      shift(graph, layout, unit, ground.arcAt(unit, best));
    }
    usable[point] = 0;
    usable[best] = 1;
    any = true;
  }
  return any;
}

/** Cost of the units of one point on another; infinite where one of them may not go. */
function groupCost(ground: Ground, layout: Layout, fine: number, point: number, on: number): number {
  const { graph, barred, fixedArc, effort } = ground;
  let cost = finedHolding(graph, fine, on, layout.load[point]);
  for (let unit = layout.firstOn[point]; unit >= 0; unit = layout.nextOn[unit]) {
    effort.moves += 1;
    const arc = ground.arcAt(unit, on);
    if (arc < 0) return Number.POSITIVE_INFINITY;
    if (on !== point && (barred[arc] === 1 || fixedArc[unit] >= 0)) return Number.POSITIVE_INFINITY;
    cost += graph.arcCost[arc];
  }
  return cost;
}

import type { Graph } from "./graph.ts";
import { type Layout, layoutOf, putOn } from "./layout.ts";
import type { Node } from "./node.ts";
import type { Relaxed } from "./relaxation.ts";

/**
 * Makes a layout of a relaxed solution: a unit on several chosen points keeps the cheapest, the units left over go, the one that
 * would lose most by waiting first, to chosen points with room; where there is no room, to the point least overloaded by it.
 */
export function repair(graph: Graph, node: Node, relaxed: Relaxed, usable: Uint8Array): Layout {
  const arcOf = node.fixedArc.slice();
  relaxed.chosen.forEach((module, point) => {
    usable[point] = module < 0 ? 0 : 1;
    if (module < 0) return;
    const start = relaxed.firstPick[module];
    for (const arc of relaxed.picks.subarray(start, start + relaxed.pickCount[module])) {
      const unit = graph.arcUnit[arc];
      const held = arcOf[unit];
      if (held < 0 || graph.arcCost[arc] < graph.arcCost[held]) arcOf[unit] = arc;
    }
  });
  const layout = layoutOf(graph, arcOf);
  serveRest(graph, node, layout, usable);
  return layout;
}

/** Serves the units of a layout not yet served, by regret; a unit no usable point can reach stays unserved. */
export function serveRest(graph: Graph, node: Node, layout: Layout, usable: Uint8Array): void {
  const waiting = new Set<number>();
  layout.arcOf.forEach((arc, unit) => {
    if (arc < 0) waiting.add(unit);
  });
  while (waiting.size > 0) {
    let next = -1;
    let nextArc = -1;
    let mostRegret = Number.NEGATIVE_INFINITY;
    for (const unit of waiting) {
      const { arc, regret } = bestArc(graph, node, layout, usable, unit);
      if (arc >= 0 && regret <= mostRegret) continue;
      next = unit;
      nextArc = arc;
      mostRegret = regret;
      if (arc < 0) break;
    }
    waiting.delete(next);
    const arc = nextArc < 0 ? leastOverload(graph, node, layout, usable, next) : nextArc;
    if (arc >= 0) putOn(graph, layout, next, arc);
  }
}

/** The cheapest arc of a unit to a usable point with room, and how much dearer the second is; big units weigh more. */
function bestArc(graph: Graph, node: Node, layout: Layout, usable: Uint8Array, unit: number) {
  let arc = -1;
  let least = Number.POSITIVE_INFINITY;
  let second = Number.POSITIVE_INFINITY;
  const ports = graph.demand[unit];
  const end = graph.firstArc[unit + 1];
  for (let k = graph.firstArc[unit]; k < end; k += 1) {
    const point = graph.arcPoint[k];
    if (node.barred[k] === 1 || usable[point] === 0) continue;
    if (layout.load[point] + ports > graph.capacity[point]) continue;
    const cost = graph.arcCost[k];
    if (cost < least) {
      second = least;
      least = cost;
      arc = k;
    } else if (cost < second) second = cost;
  }
  return { arc, regret: arc < 0 ? Number.POSITIVE_INFINITY : second - least };
}

function leastOverload(graph: Graph, node: Node, layout: Layout, usable: Uint8Array, unit: number): number {
  let arc = -1;
  let least = Number.POSITIVE_INFINITY;
  const end = graph.firstArc[unit + 1];
  for (let k = graph.firstArc[unit]; k < end; k += 1) {
    const point = graph.arcPoint[k];
    if (node.barred[k] === 1 || usable[point] === 0) continue;
    const over = layout.load[point] - graph.capacity[point];
    if (over < least) {
      least = over;
      arc = k;
    }
  }
  return arc;
}

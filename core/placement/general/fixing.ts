import type { Graph } from "./graph.ts";
import { roomForItems } from "./knapsack.ts";
import { lossWhenTaken } from "./losses.ts";
import { closePoint, type Node } from "./node.ts";
import { chooseOpen, closed, free, open } from "./openSet.ts";
import type { Relaxer } from "./relaxation.ts";

/** Decides what no layout cheaper than the best known can have otherwise. */
export type Fixer = {
  /**
   * @param pruneAt  no bound from here on can hold a better layout
   * @returns false when the node holds no better layout
   */
  readonly fix: (node: Node, pruneAt: number) => boolean;
  /** by arc, after `fix`: a lower bound of layouts that use it */
  readonly arcBound: Float64Array;
};

/**
 * Makes a fixer: at a node's prices it opens, closes and bars by what the bound would become, and fixes units with one arc left.
 *
 * @source reduced-cost tests on the relaxed problem, as in Diaz and Fernandez 2002
 */
export function makeFixer(graph: Graph, relaxer: Relaxer): Fixer {
  const scratch = new Int32Array(graph.pointCount);
  const arcBound = new Float64Array(graph.arcPoint.length);
  let widest = 0;
  for (let point = 0; point < graph.pointCount; point += 1) {
    widest = Math.max(widest, graph.firstPointArc[point + 1] - graph.firstPointArc[point]);
  }
  const items = roomForItems(widest);
  const outside = roomForItems(widest);
  const arcs = new Int32Array(widest);
  const outsideArcs = new Int32Array(widest);
  const lost = new Float64Array(widest);
  const least = new Float64Array(widest);

  const fix = (node: Node, pruneAt: number): boolean => {
    const relaxed = relaxer.relax(node, node.prices);
    if (relaxed.bound >= pruneAt) return false;
    const base = relaxed.bound - chooseOpen(graph, relaxed.reduced, node.status, scratch);
    const bound = (): number => base + chooseOpen(graph, relaxed.reduced, node.status, scratch);
    for (let point = 0; point < graph.pointCount; point += 1) {
      if (node.status[point] === closed) continue;
      let withPoint = relaxed.bound;
      if (node.status[point] === free) {
        const chosen = relaxed.chosen[point] >= 0;
        node.status[point] = chosen ? closed : open;
        const other = bound();
        node.status[point] = free;
        if (chosen && other >= pruneAt) node.status[point] = open;
        if (!chosen) withPoint = other;
        if (!chosen && other >= pruneAt) {
          closePoint(graph, node, point);
          continue;
        }
      }
      barArcs(node, point, withPoint, pruneAt);
    }
    return fixLoneUnits(graph, node);
  };

  const barArcs = (node: Node, point: number, withPoint: number, pruneAt: number): void => {
    gather(node, point);
    const count = items.count + outside.count;
    least.fill(Number.POSITIVE_INFINITY, 0, count);
    const end = graph.firstModule[point + 1];
    for (let module = graph.firstModule[point]; module < end; module += 1) {
      const capacity = graph.moduleCapacity[module] - node.fixedLoad[point];
      if (capacity < 0) continue;
      const costs = graph.moduleCost[module] + node.fixedCost[point];
      const worth = costs - relaxer.relaxed.reduced[module];
      lossWhenTaken(items, capacity, worth, outside, lost);
      for (let k = 0; k < count; k += 1) least[k] = Math.min(least[k], lost[k]);
    }
    for (let k = 0; k < count; k += 1) {
      const arc = (k < items.count ? arcs[k] : outsideArcs[k - items.count]) as number;
      arcBound[arc] = withPoint + least[k];
      if (arcBound[arc] >= pruneAt) node.barred[arc] = 1;
    }
  };

  const gather = (node: Node, point: number): void => {
    items.count = 0;
    outside.count = 0;
    const end = graph.firstPointArc[point + 1];
    for (let k = graph.firstPointArc[point]; k < end; k += 1) {
      const arc = graph.pointArcs[k];
      const unit = graph.arcUnit[arc];
      if (node.barred[arc] === 1 || node.fixedArc[unit] >= 0) continue;
      const worth = node.prices[unit] - graph.arcCost[arc];
      const into = worth > 0 ? items : outside;
      (worth > 0 ? arcs : outsideArcs)[into.count] = arc;
      into.worth[into.count] = worth;
      into.ports[into.count] = graph.demand[unit];
      into.count += 1;
    }
  };
  return { fix, arcBound };
}

/**
 * Fixes units that have one arc left, until none is new; bars arcs to points left too full.
 *
 * @returns false when a unit has no arc left or a point cannot hold what is fixed on it
 */
export function fixLoneUnits(graph: Graph, node: Node): boolean {
  for (let again = true; again; ) {
    again = false;
    for (let unit = 0; unit < graph.unitCount; unit += 1) {
      if (node.fixedArc[unit] >= 0) continue;
      let lone = -1;
      let count = 0;
      const end = graph.firstArc[unit + 1];
      for (let arc = graph.firstArc[unit]; arc < end; arc += 1) {
        if (node.barred[arc] === 1) continue;
        const point = graph.arcPoint[arc];
        if (node.fixedLoad[point] + graph.demand[unit] > graph.capacity[point]) {
          node.barred[arc] = 1;
          continue;
        }
        lone = arc;
        count += 1;
      }
      if (count === 0) return false;
      if (count > 1) continue;
      fixUnit(graph, node, lone);
      again = true;
    }
  }
  return true;
}

/** Fixes a unit on an arc, which opens its point. */
export function fixUnit(graph: Graph, node: Node, arc: number): void {
  const unit = graph.arcUnit[arc];
  const point = graph.arcPoint[arc];
  node.fixedArc[unit] = arc;
  node.status[point] = open;
  node.fixedLoad[point] = node.fixedLoad[point] + graph.demand[unit];
  node.fixedCost[point] = node.fixedCost[point] + graph.arcCost[arc];
}

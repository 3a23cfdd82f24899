import type { Graph } from "./graph.ts";
import { closed, free } from "./openSet.ts";

/** What the search has decided so far: points open or closed, arcs barred, units fixed. */
export type Node = {
  readonly status: Int8Array;
  /** by arc: 1 where the arc may not be used */
  readonly barred: Uint8Array;
  /** by unit: the arc it is fixed on, -1 while it may choose */
  readonly fixedArc: Int32Array;
  /** by point: ports and number of the units fixed on it, and what their arcs cost */
  readonly fixedLoad: Int32Array;
  readonly fixedCost: Float64Array;
  /** multipliers of the rows "each unit once": what serving a unit is worth */
  readonly prices: Float64Array;
  /** no layout within these decisions costs less */
  bound: number;
};

/** Nothing decided but what can never be: points without modules closed, arcs to points too small barred. */
export function rootNode(graph: Graph): Node {
  const node: Node = {
    status: new Int8Array(graph.pointCount).fill(free),
    barred: new Uint8Array(graph.arcPoint.length),
    fixedArc: new Int32Array(graph.unitCount).fill(-1),
    fixedLoad: new Int32Array(graph.pointCount),
    fixedCost: new Float64Array(graph.pointCount),
    prices: new Float64Array(graph.unitCount),
    bound: Number.NEGATIVE_INFINITY,
  };
  graph.arcPoint.forEach((point, arc) => {
    const ports = graph.demand[graph.arcUnit[arc]];
    if (graph.capacity[point] < ports) node.barred[arc] = 1;
  });
  for (let point = 0; point < graph.pointCount; point += 1) {
    if (graph.capacity[point] < 0) node.status[point] = closed;
  }
  return node;
}

/** A copy to decide further on. */
export function copyNode(node: Node): Node {
  return {
    status: node.status.slice(),
    barred: node.barred.slice(),
    fixedArc: node.fixedArc.slice(),
    fixedLoad: node.fixedLoad.slice(),
    fixedCost: node.fixedCost.slice(),
    prices: node.prices.slice(),
    bound: node.bound,
  };
}

/** Closes a point and bars its arcs. */
export function closePoint(graph: Graph, node: Node, point: number): void {
  node.status[point] = closed;
  const end = graph.firstPointArc[point + 1];
  for (let k = graph.firstPointArc[point]; k < end; k += 1) node.barred[graph.pointArcs[k]] = 1;
}

import type { Graph } from "./graph.ts";
import type { Node } from "./node.ts";

/** Where local search may move, and by what means. */
export type Ground = {
  readonly graph: Graph;
  /** by point: 1 where units may be put */
  readonly usable: Uint8Array;
  /** by arc: 1 where it may not be used */
  readonly barred: Uint8Array;
  /** by unit: the arc it must keep, -1 for none */
  readonly fixedArc: Int32Array;
  /** the arc between a unit and a point, -1 for none */
  readonly arcAt: (unit: number, point: number) => number;
  readonly draw: () => number;
  readonly stopped: () => boolean;
  /** moves looked at so far: a measure of work that, unlike a clock, is the same on every run */
  readonly effort: { moves: number };
};

/** What every ground of a search shares. */
export type Tools = Pick<Ground, "graph" | "arcAt" | "draw" | "stopped" | "effort">;

/** The ground of one node; it shares what the node has decided. */
export function groundOf(tools: Tools, node: Node, usable: Uint8Array): Ground {
  return { ...tools, usable, barred: node.barred, fixedArc: node.fixedArc };
}

/** Finds arcs by unit and point. */
export function arcFinder(graph: Graph): Ground["arcAt"] {
  return (unit, point) => {
    let low = graph.firstArc[unit];
    let high = graph.firstArc[unit + 1] - 1;
    // where every unit reaches every point the arc stands at its point's place
    const straight = low + point;
    if (straight <= high && graph.arcPoint[straight] === point) return straight;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const at = graph.arcPoint[middle];
      if (at === point) return middle;
      if (at < point) low = middle + 1;
      else high = middle - 1;
    }
    return -1;
  };
}

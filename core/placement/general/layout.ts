import { type Graph, holdingCost } from "./graph.ts";

/** A layout under work: the arc of each unit, the load of each point. It may overload points, or leave units out (arc -1). */
export type Layout = {
  readonly arcOf: Int32Array;
  readonly load: Int32Array;
  /** units by point */
  readonly count: Int32Array;
  /** the units of a point as a chain: its first, then each one's next; -1 ends it */
  readonly firstOn: Int32Array;
  readonly nextOn: Int32Array;
  readonly beforeOn: Int32Array;
};

/** A whole layout and what it costs. */
export type Found = { readonly arcOf: Int32Array; readonly cost: number };

/** A layout of the arcs given; -1 for a unit not yet served. */
export function layoutOf(graph: Graph, arcOf: Int32Array): Layout {
  const layout: Layout = {
    arcOf: new Int32Array(graph.unitCount).fill(-1),
    load: new Int32Array(graph.pointCount),
    count: new Int32Array(graph.pointCount),
    firstOn: new Int32Array(graph.pointCount).fill(-1),
    nextOn: new Int32Array(graph.unitCount),
    beforeOn: new Int32Array(graph.unitCount),
  };
  arcOf.forEach((arc, unit) => {
    if (arc >= 0) putOn(graph, layout, unit, arc);
  });
  return layout;
}

/** Puts an unserved unit on an arc. */
export function putOn(graph: Graph, layout: Layout, unit: number, arc: number): void {
  const point = graph.arcPoint[arc];
  layout.arcOf[unit] = arc;
  layout.load[point] = layout.load[point] + graph.demand[unit];
  layout.count[point] = layout.count[point] + 1;
  const next = layout.firstOn[point];
  layout.nextOn[unit] = next;
  layout.beforeOn[unit] = -1;
  if (next >= 0) layout.beforeOn[next] = unit;
  layout.firstOn[point] = unit;
}

/** Takes a unit off its point. */
export function takeOff(graph: Graph, layout: Layout, unit: number): void {
  const point = graph.arcPoint[layout.arcOf[unit]];
  layout.arcOf[unit] = -1;
  layout.load[point] = layout.load[point] - graph.demand[unit];
  layout.count[point] = layout.count[point] - 1;
  const next = layout.nextOn[unit];
  const before = layout.beforeOn[unit];
  if (next >= 0) layout.beforeOn[next] = before;
  if (before >= 0) layout.nextOn[before] = next;
  else layout.firstOn[point] = next;
}

/** Moves a unit to another arc. */
export function shift(graph: Graph, layout: Layout, unit: number, arc: number): void {
  takeOff(graph, layout, unit);
  putOn(graph, layout, unit, arc);
}

/**
 * What a point costs when its load and its number of units change: its module, and a fine on each port beyond the largest; nothing
 * without units.
 */
export function finedCost(
  graph: Graph,
  layout: Layout,
  fine: number,
  point: number,
  ports: number,
  units: number,
): number {
  if (layout.count[point] + units === 0) return 0;
  return finedHolding(graph, fine, point, layout.load[point] + ports);
}

/** Cost of holding a load at a point, with a fine on each port beyond its largest module. */
export function finedHolding(graph: Graph, fine: number, point: number, load: number): number {
  const over = load - graph.capacity[point];
  return over > 0 ? holdingCost(graph, point, load - over) + fine * over : holdingCost(graph, point, load);
}

/** What a layout costs; infinite when a unit is not served, a point overloaded, or too many points open. */
export function costOf(graph: Graph, layout: Layout): number {
  let cost = 0;
  let openCount = 0;
  for (const arc of layout.arcOf) {
    if (arc < 0) return Number.POSITIVE_INFINITY;
    cost += graph.arcCost[arc];
  }
  for (let point = 0; point < graph.pointCount; point += 1) {
    if (layout.count[point] === 0) continue;
    openCount += 1;
    cost += holdingCost(graph, point, layout.load[point]);
  }
  if (graph.openExactly === null) return cost;
  return cost + idleCost(graph, layout, graph.openExactly - openCount);
}

/** Cost of opening points that serve nobody, where the number of open points is given; infinite for less than none. */
function idleCost(graph: Graph, layout: Layout, idleCount: number): number {
  if (idleCount === 0) return 0;
  const idle: number[] = [];
  for (let point = 0; point < graph.pointCount; point += 1) {
    if (layout.count[point] === 0 && graph.capacity[point] >= 0) {
      idle.push(holdingCost(graph, point, 0));
    }
  }
  if (idleCount < 0 || idleCount > idle.length) return Number.POSITIVE_INFINITY;
  return idle
    .sort((a, b) => a - b)
    .slice(0, idleCount)
    .reduce((sum, cost) => sum + cost, 0);
}

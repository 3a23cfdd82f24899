import { byWorthAPort, deepKnapsack } from "./deepKnapsack.ts";
import type { Graph } from "./graph.ts";
import { emptyTable, fillTable, type Items, readTable, roomForItems, type Table } from "./knapsack.ts";
import type { Node } from "./node.ts";
import { chooseOpen, closed } from "./openSet.ts";

/** Capacities above this are not tabled but searched. */
const tableLimit = 4_000;

/** What the search of a knapsack is reckoned to cost for each item, in table cells. */
const stepsAnItem = 100;

/** The solution of the relaxed problem at some prices. It belongs to its maker and is overwritten by the next one. */
export type Relaxed = {
  bound: number;
  /** by module: its cost less the best it could save at the prices; infinite where it cannot hold the units fixed */
  readonly reduced: Float64Array;
  /** by point: the module chosen, -1 for none */
  readonly chosen: Int32Array;
  /** arcs of the best filling of each module: `picks[firstPick[m] ..+ pickCount[m]]` */
  readonly picks: Int32Array;
  readonly firstPick: Int32Array;
  readonly pickCount: Int32Array;
  /** by unit: on how many of the chosen points it lies */
  readonly times: Int32Array;
};

/** Relaxes the rows "each unit once": what remains is a knapsack a point, and the choice of points. */
export type Relaxer = {
  readonly relax: (node: Node, prices: Float64Array) => Relaxed;
  readonly relaxed: Relaxed;
  /** table cells filled so far: a measure of work that, unlike a clock, is the same on every run */
  readonly effort: { cells: number };
};

/** Makes a relaxer with room for a graph. */
export function makeRelaxer(graph: Graph): Relaxer {
  const firstPick = new Int32Array(graph.moduleCost.length + 1);
  const arcsOf = (point: number) => graph.firstPointArc[point + 1] - graph.firstPointArc[point];
  let widest = 0;
  for (let point = 0; point < graph.pointCount; point += 1) {
    const arcs = arcsOf(point);
    widest = Math.max(widest, arcs);
    const end = graph.firstModule[point + 1];
    for (let module = graph.firstModule[point]; module < end; module += 1) {
      firstPick[module + 1] = firstPick[module] + arcs;
    }
  }
  const relaxed: Relaxed = {
    bound: Number.NEGATIVE_INFINITY,
    reduced: new Float64Array(graph.moduleCost.length),
    chosen: new Int32Array(graph.pointCount),
    picks: new Int32Array(firstPick.at(-1) ?? 0),
    firstPick,
    pickCount: new Int32Array(graph.moduleCost.length),
    times: new Int32Array(graph.unitCount),
  };
  const items = roomForItems(widest);
  const itemArcs = new Int32Array(widest);
  const table = emptyTable();

  const effort = { cells: 0 };

  const relax = (node: Node, prices: Float64Array): Relaxed => {
    for (let point = 0; point < graph.pointCount; point += 1) {
      if (node.status[point] === closed) continue;
      gatherItems(graph, node, prices, point, items, itemArcs);
      reducePoint(graph, node, point, items, itemArcs, table, relaxed);
      effort.cells +=
        arcsOf(point) + items.count * (graph.capacity[point] <= tableLimit ? graph.capacity[point] : stepsAnItem);
    }
    relaxed.bound = chooseOpen(graph, relaxed.reduced, node.status, relaxed.chosen);
    for (let unit = 0; unit < graph.unitCount; unit += 1) {
      if (node.fixedArc[unit] < 0) relaxed.bound += prices[unit];
    }
    countTimes(graph, node, relaxed);
    return relaxed;
  };
  return { relax, relaxed, effort };
}

/** The units of a point worth more than their arc, units fixed apart. */
function gatherItems(
  graph: Graph,
  node: Node,
  prices: Float64Array,
  point: number,
  items: Items,
  itemArcs: Int32Array,
): void {
  const { pointArcs, arcUnit, arcCost, demand } = graph;
  const end = graph.firstPointArc[point + 1];
  const room = graph.capacity[point] - node.fixedLoad[point];
  let count = 0;
  for (let k = graph.firstPointArc[point]; k < end; k += 1) {
    const arc = pointArcs[k];
    if (node.barred[arc] === 1) continue;
    const unit = arcUnit[arc];
    const worth = prices[unit] - arcCost[arc];
    const ports = demand[unit];
    if (worth <= 0 || ports > room || node.fixedArc[unit] >= 0) continue;
    items.worth[count] = worth;
    items.ports[count] = ports;
    itemArcs[count] = arc;
    count += 1;
  }
  items.count = count;
}

function reducePoint(
  graph: Graph,
  node: Node,
  point: number,
  items: Items,
  itemArcs: Int32Array,
  table: Table,
  relaxed: Relaxed,
): void {
  const fixedLoad = node.fixedLoad[point];
  const fixedCost = node.fixedCost[point];
  const room = graph.capacity[point] - fixedLoad;
  const tabled = room <= tableLimit;
  if (tabled && room >= 0) fillTable(table, items, room);
  const order = tabled ? null : byWorthAPort(items);
  const end = graph.firstModule[point + 1];
  for (let module = graph.firstModule[point]; module < end; module += 1) {
    const capacity = graph.moduleCapacity[module] - fixedLoad;
    const start = relaxed.firstPick[module];
    if (capacity < 0) {
      relaxed.reduced[module] = Number.POSITIVE_INFINITY;
      continue;
    }
    let worth: number;
    let count: number;
    if (order) ({ worth, count } = deepKnapsack(items, order, capacity, relaxed.picks, start));
    else {
      worth = table.worth[capacity];
      count = readTable(table, items, capacity, relaxed.picks, start);
    }
    for (let k = start; k < start + count; k += 1) {
      relaxed.picks[k] = itemArcs[relaxed.picks[k]];
    }
    relaxed.pickCount[module] = count;
    relaxed.reduced[module] = graph.moduleCost[module] + fixedCost - worth;
  }
}

function countTimes(graph: Graph, node: Node, relaxed: Relaxed): void {
  for (let unit = 0; unit < graph.unitCount; unit += 1) {
    relaxed.times[unit] = node.fixedArc[unit] >= 0 ? 1 : 0;
  }
  for (const module of relaxed.chosen) {
    if (module < 0) continue;
    const start = relaxed.firstPick[module];
    const end = start + relaxed.pickCount[module];
    for (let k = start; k < end; k += 1) {
      const unit = graph.arcUnit[relaxed.picks[k]];
      relaxed.times[unit] = relaxed.times[unit] + 1;
    }
  }
}

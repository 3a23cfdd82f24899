import type { Graph } from "./graph.ts";

/** Columns at most of the table that covers the demand; ports are counted in larger lots beyond it. */
const columnLimit = 2_000;

/** What a node of the search has decided about a point. */
export const free = 0;
export const open = 1;
export const closed = -1;

/**
 * Chooses a module for each point, or none, so that reduced costs are least and the modules chosen could hold all demand (or, where
 * the number of open points is given, so many points are open).
 *
 * @param reduced  by module, what it costs less what it saves at the present prices
 * @param status   by point: free, open or closed
 * @param chosen   set to the module of each point, -1 for none
 * @returns the sum of reduced costs; infinite when no choice holds the demand
 */
export function chooseOpen(graph: Graph, reduced: Float64Array, status: Int8Array, chosen: Int32Array): number {
  if (graph.openExactly !== null) return chooseCount(graph, reduced, status, chosen, graph.openExactly);
  let sum = 0;
  let capacity = 0;
  for (let point = 0; point < graph.pointCount; point += 1) {
    const module = status[point] === closed ? -1 : leastModule(graph, reduced, point);
    const use = module >= 0 && (status[point] === open || reduced[module] < 0);
    chosen[point] = use ? module : -1;
    if (status[point] === open && !use) return Number.POSITIVE_INFINITY;
    if (!use) continue;
    sum += reduced[module];
    capacity += graph.moduleCapacity[module];
  }
  return capacity >= graph.demandSum ? sum : coverDemand(graph, reduced, status, chosen);
}

function leastModule(graph: Graph, reduced: Float64Array, point: number): number {
  let least = -1;
  const end = graph.firstModule[point + 1];
  for (let module = graph.firstModule[point]; module < end; module += 1) {
    const cost = reduced[module];
    if (cost < Number.POSITIVE_INFINITY && (least < 0 || cost <= reduced[least])) least = module;
  }
  return least;
}

function chooseCount(
  graph: Graph,
  reduced: Float64Array,
  status: Int8Array,
  chosen: Int32Array,
  openCount: number,
): number {
  let sum = 0;
  let left = openCount;
  const others: { point: number; module: number; cost: number }[] = [];
  chosen.fill(-1);
  for (let point = 0; point < graph.pointCount; point += 1) {
    if (status[point] === closed) continue;
    const module = leastModule(graph, reduced, point);
    if (module < 0 && status[point] === open) return Number.POSITIVE_INFINITY;
    if (module < 0) continue;
    const cost = reduced[module];
    if (status[point] === open) {
      chosen[point] = module;
      sum += cost;
      left -= 1;
    } else others.push({ point, module, cost });
  }
  if (left < 0 || left > others.length) return Number.POSITIVE_INFINITY;
  others.sort((a, b) => a.cost - b.cost || a.point - b.point);
  for (const { point, module, cost } of others.slice(0, left)) {
    chosen[point] = module;
    sum += cost;
  }
  return sum;
}

/**
 * Least reduced cost that covers the demand: a multiple-choice covering knapsack. Where ports are counted in lots, capacities are
 * rounded up, so that the sum stays a lower bound.
 */
function coverDemand(graph: Graph, reduced: Float64Array, status: Int8Array, chosen: Int32Array): number {
  const lot = Math.ceil(graph.demandSum / columnLimit);
  const need = Math.ceil(graph.demandSum / lot);
  const width = need + 1;
  let before = new Float64Array(width).fill(Number.POSITIVE_INFINITY);
  let after = new Float64Array(width);
  before[0] = 0;
  const choice = new Int32Array(graph.pointCount * width).fill(-1);
  let reach = 0;
  for (let point = 0; point < graph.pointCount; point += 1) {
    if (status[point] === closed) continue;
    if (status[point] === open) after.fill(Number.POSITIVE_INFINITY);
    else after.set(before);
    const row = point * width;
    let largest = 0;
    const end = graph.firstModule[point + 1];
    for (let module = graph.firstModule[point]; module < end; module += 1) {
      const cost = reduced[module];
      if (cost === Number.POSITIVE_INFINITY) continue;
      const lots = Math.ceil(graph.moduleCapacity[module] / lot);
      largest = Math.max(largest, lots);
      for (let held = Math.min(reach, need); held >= 0; held -= 1) {
        const sum = before[held] + cost;
        const then = Math.min(held + lots, need);
        if (sum < after[then]) {
          after[then] = sum;
          choice[row + then] = module * width + held;
        }
      }
    }
    reach = Math.min(reach + largest, need);
    [before, after] = [after, before];
  }
  const sum = before[need];
  if (sum === Number.POSITIVE_INFINITY) return sum;
  let held = need;
  for (let point = graph.pointCount - 1; point >= 0; point -= 1) {
    const made = status[point] === closed ? -1 : choice[point * width + held];
    chosen[point] = made < 0 ? -1 : Math.floor(made / width);
    if (made >= 0) held = made % width;
  }
  return sum;
}

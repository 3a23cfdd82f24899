import type { Graph } from "./graph.ts";
import type { Node } from "./node.ts";
import type { Relaxed, Relaxer } from "./relaxation.ts";

/** How far a step goes at first, and where it is so short that the climb ends. */
export type Climb = {
  readonly rounds: number;
  readonly firstStep: number;
  readonly lastStep: number;
  /** rounds without a better bound after which steps are halved */
  readonly patience: number;
};

/** How often, in the later relaxed solutions, each arc was used and each point chosen: from 0 to 1. */
export type Shares = { readonly arc: Float64Array; readonly point: Float64Array };

/** Part of the last direction that is kept. */
const momentum = 0.6;
/** A target stands at most by this part above the best bound. */
const farthestAim = 0.05;
/** Weight of the newest relaxed solution in the shares. */
const freshness = 0.06;

/**
 * Raises the bound of a node by moving its prices; `node.prices` and `node.bound` keep the best.
 *
 * @param goal    cost that a bound need not pass: the climb ends there
 * @param target  cost the steps aim at, above the bound
 * @param shares  kept as a running mean of relaxed solutions
 * @param heard   hears each relaxed solution, and whether its bound was the best so far; says true to end the climb
 * @source subgradient of Held, Wolfe, Crowder 1974 with Polyak's step; momentum of Camerini, Fratta, Maffioli 1975; running mean of
 *   Barahona and Anbil 2000
 */
export function climb(
  graph: Graph,
  relaxer: Relaxer,
  node: Node,
  plan: Climb,
  goal: () => number,
  shares: Shares,
  heard: (relaxed: Relaxed, better: boolean) => boolean,
): void {
  const prices = node.prices.slice();
  const direction = new Float64Array(graph.unitCount);
  let step = plan.firstStep;
  let stale = 0;
  let best = Number.NEGATIVE_INFINITY;
  for (let round = 0; round < plan.rounds && step > plan.lastStep; round += 1) {
    const relaxed = relaxer.relax(node, prices);
    const better = relaxed.bound > best;
    if (better) {
      if (!(relaxed.bound - best <= 1e-4 * Math.abs(best))) stale = 0;
      else stale += 1;
      best = relaxed.bound;
      if (best > node.bound) node.bound = best;
      node.prices.set(prices);
    } else stale += 1;
    blend(graph, node, relaxed, shares);
    if (heard(relaxed, better) || node.bound >= goal()) return;
    if (stale >= plan.patience) {
      stale = 0;
      step /= 2;
      prices.set(node.prices);
      direction.fill(0);
      continue;
    }
    let length = 0;
    for (let unit = 0; unit < graph.unitCount; unit += 1) {
      const slack = 1 - relaxed.times[unit];
      const next = slack + momentum * direction[unit];
      direction[unit] = next;
      length += next * next;
    }
    // every unit once and no momentum left: the relaxed solution is a layout
    if (length === 0) return;
    const way = wayTo(goal(), best, relaxed.bound);
    const move = (step * way) / length;
    for (let unit = 0; unit < graph.unitCount; unit += 1) {
      prices[unit] = prices[unit] + move * direction[unit];
    }
  }
}

/** How far above a bound the steps aim: at the goal, but never farther above the best bound than a good layout may be. */
function wayTo(goal: number, best: number, bound: number): number {
  const target = Math.min(goal, best + farthestAim * Math.abs(best) + 1);
  return Math.max(1.02 * (target - bound), 1e-6 * Math.abs(best));
}

function blend(graph: Graph, node: Node, relaxed: Relaxed, { arc: arcs, point: points }: Shares): void {
  for (let arc = 0; arc < arcs.length; arc += 1) arcs[arc] = arcs[arc] * (1 - freshness);
  for (let point = 0; point < graph.pointCount; point += 1) {
    const module = relaxed.chosen[point];
    points[point] = points[point] * (1 - freshness) + (module < 0 ? 0 : freshness);
    if (module < 0) continue;
    const start = relaxed.firstPick[module];
    const end = start + relaxed.pickCount[module];
    for (let k = start; k < end; k += 1) {
      const arc = relaxed.picks[k];
      arcs[arc] = arcs[arc] + freshness;
    }
  }
  for (const arc of node.fixedArc) if (arc >= 0) arcs[arc] = arcs[arc] + freshness;
}

/** Prices to start from: the cheapest way to serve a unit when points are paid by the port. */
export function firstPrices(graph: Graph, node: Node): void {
  for (let unit = 0; unit < graph.unitCount; unit += 1) {
    let least = Number.POSITIVE_INFINITY;
    const end = graph.firstArc[unit + 1];
    for (let arc = graph.firstArc[unit]; arc < end; arc += 1) {
      const point = graph.arcPoint[arc];
      if (node.barred[arc] === 1) continue;
      const capacity = graph.capacity[point];
      const last = graph.firstModule[point + 1] - 1;
      const aPort = capacity > 0 ? graph.moduleCost[last] / capacity : 0;
      least = Math.min(least, graph.arcCost[arc] + aPort * graph.demand[unit]);
    }
    node.prices[unit] = least === Number.POSITIVE_INFINITY ? 0 : least;
  }
}

import type { Graph } from "./graph.ts";
import { groundOf, type Tools } from "./ground.ts";
import type { Incumbent } from "./incumbent.ts";
import { type Found, layoutOf } from "./layout.ts";
import { localSearch } from "./localSearch.ts";
import type { Node } from "./node.ts";
import { closed, open } from "./openSet.ts";
import type { Relaxed } from "./relaxation.ts";
import { serveRest, vacate } from "./repair.ts";

/** Neighbours of one set that are tried before the search moves to the best of them. */
const breadth = 12;
/** Points at most that are exchanged one for one, and two for one: the dearest within, the cheapest without. */
const singles = 150;
const pairs = 24;
/** Moves without a better layout after which the search of one set ends, the first time round. */
const firstPatience = 40;

/** Sets of open points, tried one a step. */
export type SetSearch = { readonly step: () => void };

type Candidate = { readonly usable: Uint8Array; readonly bound: number };

/**
 * Tabu search over sets of open points. What a set costs at least is known from the relaxation: the prices, and the reduced cost of
 * each of its points. So neighbours (one point more, less, or exchanged; two for one and one for two) come by that bound, those that
 * cannot be better are never tried, and no set is tried twice until all
 * within reach have been; then patience doubles.
 *
 * @param root     what is decided for all layouts looked for
 * @param relaxed  the relaxed solution at the root's prices
 */
export function makeSetSearch(
  graph: Graph,
  tools: Tools,
  incumbent: Incumbent,
  root: Node,
  relaxed: Relaxed,
): SetSearch {
  const reduced = leastReduced(graph, root, relaxed.reduced);
  const prices = root.prices.reduce((sum, price, unit) => (root.fixedArc[unit] < 0 ? sum + price : sum), 0);
  const tried = new Set<string>();
  let patience = firstPatience;
  let present: Found | null = null;
  let queue: Candidate[] = [];
  let looked = 0;
  let best: Found | null = null;

  const restart = (from: Found): void => {
    present = from;
    best = null;
    looked = 0;
    const usable = usedPoints(graph, root, from.arcOf);
    tried.add(usable.join());
    queue = neighbours(graph, root, reduced, prices, usable, incumbent.pruneAt()).filter(
      (candidate) => !tried.has(candidate.usable.join()),
    );
  };

  return {
    step() {
      const known = incumbent.arcOf();
      if (!known) return;
      if (!present || (best && looked >= breadth)) restart(best ?? { arcOf: known, cost: incumbent.cost() });
      const next = queue.shift();
      if (!next || !present) {
        // nothing left beside this set: go on from the best met, or begin again with more patience
        if (best) return restart(best);
        present = null;
        patience *= 2;
        tried.clear();
        return;
      }
      looked += 1;
      tried.add(next.usable.join());
      const layout = layoutOf(
        graph,
        present.arcOf.map((arc, unit) =>
          root.fixedArc[unit] >= 0 ? root.fixedArc[unit] : root.barred[arc] ? -1 : arc,
        ),
      );
      vacate(graph, layout, next.usable);
      serveRest(graph, root, layout, next.usable);
      const found = localSearch(groundOf(tools, root, next.usable), layout, patience, Number.POSITIVE_INFINITY);
      if (!found) return;
      if (!best || found.cost < best.cost) best = found;
      if (incumbent.offer(found)) restart(found);
    },
  };
}

function leastReduced(graph: Graph, root: Node, reduced: Float64Array): Float64Array {
  return Float64Array.from({ length: graph.pointCount }, (_, point) =>
    root.status[point] === closed
      ? Number.POSITIVE_INFINITY
      : reduced.subarray(graph.firstModule[point], graph.firstModule[point + 1]).reduce((a, b) => Math.min(a, b)),
  );
}

/** The points a layout uses, as far as they may be, and those that must be open. */
function usedPoints(graph: Graph, root: Node, arcOf: Int32Array): Uint8Array {
  const used = new Uint8Array(graph.pointCount);
  for (const arc of arcOf) used[graph.arcPoint[arc]] = 1;
  root.status.forEach((status, point) => {
    if (status === open) used[point] = 1;
    if (status === closed) used[point] = 0;
  });
  return used;
}

/** The sets beside a set that could hold all demand and hold a better layout, the likeliest first. */
function neighbours(
  graph: Graph,
  root: Node,
  reduced: Float64Array,
  prices: number,
  usable: Uint8Array,
  pruneAt: number,
): Candidate[] {
  const points = Array.from(usable.keys());
  const inside = points
    .filter((point) => usable[point] === 1 && root.status[point] !== open)
    .sort((a, b) => reduced[b] - reduced[a] || a - b)
    .slice(0, singles);
  const outside = points
    .filter((point) => usable[point] === 0 && root.status[point] !== closed)
    .sort((a, b) => reduced[a] - reduced[b] || a - b)
    .slice(0, singles);
  let bound = prices;
  let room = -graph.demandSum;
  let openCount = 0;
  for (const point of points) {
    if (usable[point] === 0) continue;
    bound += reduced[point];
    room += graph.capacity[point];
    openCount += 1;
  }
  const found: Candidate[] = [];
  const consider = (gone: readonly number[], come: readonly number[]): void => {
    if (graph.openExactly !== null && openCount - gone.length + come.length !== graph.openExactly) return;
    let then = bound;
    let left = room;
    for (const point of gone) {
      then -= reduced[point];
      left -= graph.capacity[point];
    }
    for (const point of come) {
      then += reduced[point];
      left += graph.capacity[point];
    }
    if (left < 0 || then >= pruneAt) return;
    const set = usable.slice();
    for (const point of gone) set[point] = 0;
    for (const point of come) set[point] = 1;
    found.push({ usable: set, bound: then });
  };
  const pairsOf = (of: readonly number[]) => of.flatMap((a, k) => of.slice(k + 1).map((b) => [a, b]));
  const none: readonly number[] = [];
  for (const gone of [none, ...inside.map((point) => [point])]) {
    for (const come of [none, ...outside.map((point) => [point])])
      if (gone.length + come.length > 0) consider(gone, come);
  }
  if (graph.openExactly === null) {
    const dear = inside.slice(0, pairs);
    const cheap = outside.slice(0, pairs);
    for (const gone of pairsOf(dear)) for (const come of cheap) consider(gone, [come]);
    for (const gone of dear) for (const come of pairsOf(cheap)) consider([gone], come);
  }
  return found.sort((a, b) => a.bound - b.bound);
}

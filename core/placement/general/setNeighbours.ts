import type { Graph } from "./graph.ts";
import type { Node } from "./node.ts";
import { closed, open } from "./openSet.ts";

/** Points at most that are exchanged one for one, and two for one: the dearest within, the cheapest without. */
const singles = 150;
const pairs = 24;

/** A set of points that may be used, and what its layouts cost at least. */
export type Candidate = { readonly usable: Uint8Array; readonly bound: number };

/** What each point costs at least at the prices of a relaxed solution; infinite where it is closed. */
export function leastReduced(graph: Graph, root: Node, reduced: Float64Array): Float64Array {
  return Float64Array.from({ length: graph.pointCount }, (_, point) =>
    root.status[point] === closed
      ? Number.POSITIVE_INFINITY
      : reduced.subarray(graph.firstModule[point], graph.firstModule[point + 1]).reduce((a, b) => Math.min(a, b)),
  );
}

/** The sets beside a set that could hold all demand and hold a better layout, the likeliest first. */
export function neighbours(
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

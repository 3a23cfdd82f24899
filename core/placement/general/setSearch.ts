import { fixLoneUnits, makeFixer } from "./fixing.ts";
import type { Graph } from "./graph.ts";
import { groundOf, type Tools } from "./ground.ts";
import type { Incumbent } from "./incumbent.ts";
import { type Found, type Layout, layoutOf } from "./layout.ts";
import { localSearch } from "./localSearch.ts";
import { type Climb, climb, type Shares } from "./multipliers.ts";
import { closePoint, copyNode, type Node } from "./node.ts";
import { closed, open } from "./openSet.ts";
import { makeRelaxer, type Relaxed } from "./relaxation.ts";
import { repair } from "./repair.ts";
import { type Candidate, leastReduced, neighbours } from "./setNeighbours.ts";

/** Sets with a layout that are looked at before the search moves to the best of them. */
const breadth = 12;
/** Moves without a better layout after which the search of one set ends, the first time round. */
const firstPatience = 100;
/** Layouts dearer than the best by more than this part are not searched further. */
const slack = 0.02;
/** First only the bound of a set is raised; most sets are given up on it. Then relaxed solutions are made into layouts. */
const boundClimb: Climb = { rounds: 40, firstStep: 0.5, lastStep: 0.03, patience: 4 };
const layoutClimb: Climb = { rounds: 20, firstStep: 0.2, lastStep: 0.01, patience: 4 };

/** Sets of open points, tried one a step. */
export type SetSearch = {
  readonly step: () => void;
  /** table cells filled so far to bound sets */
  readonly cells: () => number;
};

/**
 * Tabu search over sets of open points. What a set costs at least is known from the relaxation: the prices, and the reduced cost of
 * each of its points. So neighbours (one point more, less, or exchanged; two for one and one for two) come by that bound, those that
 * cannot be better are never tried, and no set is tried twice until all within reach have been; then patience doubles. A set that is
 * tried has its own bound raised first, and is searched for layouts only where that leaves hope.
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
  const searchSet = makeSetLayouts(graph, tools, incumbent);
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
    cells: searchSet.cells,
    step() {
      const known = incumbent.arcOf();
      if (!known) return;
      if (!present || (best && looked >= breadth)) restart(best ?? { arcOf: known, cost: incumbent.cost() });
      const next = queue.shift();
      if (!next) {
        // nothing left beside this set: go on from the best met, or begin again with more patience
        if (best) return restart(best);
        present = null;
        patience *= 2;
        tried.clear();
        return;
      }
      tried.add(next.usable.join());
      const node = nodeOfSet(graph, root, next.usable);
      const found = node && searchSet.layoutIn(node, next.usable, patience);
      if (!found) return;
      looked += 1;
      if (!best || found.cost < best.cost) best = found;
      if (incumbent.offer(found)) restart(found);
    },
  };
}

/** Searches the layouts that open exactly the points of one set. */
function makeSetLayouts(graph: Graph, tools: Tools, incumbent: Incumbent) {
  const relaxer = makeRelaxer(graph);
  const fixer = makeFixer(graph, relaxer);
  const shares: Shares = { arc: new Float64Array(graph.arcPoint.length), point: new Float64Array(graph.pointCount) };
  const chosen = new Uint8Array(graph.pointCount);

  /** The best layout met in a set; null where the set holds none better than the best known, or none was met. */
  const layoutIn = (node: Node, usable: Uint8Array, patience: number): Found | null => {
    climb(graph, relaxer, node, boundClimb, incumbent.pruneAt, shares, tools.stopped);
    if (node.bound >= incumbent.pruneAt() || !fixer.fix(node, incumbent.pruneAt())) return null;
    let best: Found | null = null;
    const ground = groundOf(tools, node, usable);
    const look = (layout: Layout, moves: number, worthwhile: number): void => {
      const found = localSearch(ground, layout, moves, worthwhile);
      if (found && found.cost < (best?.cost ?? Number.POSITIVE_INFINITY)) best = found;
    };
    climb(graph, relaxer, node, layoutClimb, incumbent.pruneAt, shares, (relaxed) => {
      look(repair(graph, node, relaxed, chosen), 0, 0);
      return tools.stopped();
    });
    const found = best as Found | null;
    if (found) look(layoutOf(graph, found.arcOf), patience, incumbent.cost() * (1 + slack));
    return best;
  };
  return { layoutIn, cells: () => relaxer.effort.cells };
}

/** The node whose layouts open exactly the points of a set; null when it has none. */
function nodeOfSet(graph: Graph, root: Node, usable: Uint8Array): Node | null {
  const node = copyNode(root);
  for (let point = 0; point < graph.pointCount; point += 1) {
    if (usable[point] === 1) node.status[point] = open;
    else if (node.status[point] !== closed) closePoint(graph, node, point);
  }
  return fixLoneUnits(graph, node) ? node : null;
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

import type { Graph } from "./graph.ts";
import { arcFinder, type Ground, groundOf, type Tools } from "./ground.ts";
import type { Incumbent } from "./incumbent.ts";
import { layoutOf } from "./layout.ts";
import { localSearch } from "./localSearch.ts";
import type { Node } from "./node.ts";
import type { Relaxed, Relaxer } from "./relaxation.ts";
import { repair } from "./repair.ts";
import { makeSetSearch, type SetSearch } from "./setSearch.ts";
import { makeShaking, type Shaking } from "./shaking.ts";

/** Table cells that cost as much time as one move looked at. */
const cellsAMove = 6;
/** Work for each part of work of the relaxation: local search on relaxed solutions, and the search of sets of points. */
const hearShare = 1;
const setShare = 3;
/** Where the number of open points is given, most of the work on layouts goes to shaking them. */
const shakeShare = 6;
const setShareBesideShakes = 1;
/** Layouts count as improving until the work is so many times that at the last better one; then the shares are so much less. */
const hopeFactor = 4;
const staleDivisor = 2;
const staleShakeDivisor = 6;
/** A gap this wide, as a part of the cost, gives layouts their whole share: the narrower it is, the more the proof gets. */
const wideGap = 0.003;
/** Sets tried, and layouts shaken, between two nodes at most. */
const stepsANode = 50;
/** Moves a search may always look at, whatever the relaxation has worked. */
const firstMoves = 200_000;
/** Layouts dearer than the best by more than this part are not searched further. */
const slack = 0.1;

/** Turns relaxed solutions into layouts and offers them; between nodes, searches the sets of open points and shakes layouts. */
export type Primal = {
  readonly hear: (node: Node, relaxed: Relaxed) => void;
  /** begins the search over sets, from the decisions and the relaxed solution of the root, and the shaking */
  readonly begin: (root: Node, relaxed: Relaxed) => void;
  readonly step: () => void;
};

/** Makes the primal side of a search: repair and local search, in balance with the work of the relaxation. */
export function makePrimal(
  graph: Graph,
  incumbent: Incumbent,
  relaxer: Relaxer,
  draw: () => number,
  stopped: () => boolean,
): Primal {
  const usable = new Uint8Array(graph.pointCount);
  const tools = { graph, arcAt: arcFinder(graph), draw, stopped };
  const hearing: Tools = { ...tools, effort: { moves: 0 } };
  const searching: Tools = { ...tools, effort: { moves: 0 } };
  const shaking: Tools = { ...tools, effort: { moves: 0 } };
  const visits = new Map<string, number>();
  let sets: SetSearch | null = null;
  let shakes: Shaking | null = null;

  let bestCost = Number.POSITIVE_INFINITY;
  let improvedAt = 0;
  /** Whether the relaxation has worked enough for more work on layouts; `divisor` times as much, once layouts have ceased to improve. */
  const rested = (worked: number, share: number, divisor = staleDivisor): boolean => {
    const { cells } = relaxer.effort;
    if (incumbent.cost() < bestCost) {
      bestCost = incumbent.cost();
      improvedAt = cells;
    }
    const hopeful = Math.min(cells, hopeFactor * improvedAt);
    const open = bestCost < Number.POSITIVE_INFINITY ? (bestCost - incumbent.bound()) / (wideGap * bestCost) : 1;
    return worked < firstMoves * cellsAMove + share * Math.min(1, open) * (hopeful + (cells - hopeful) / divisor);
  };
  const heard = (): number => hearing.effort.moves * cellsAMove;
  const searched = (): number => searching.effort.moves * cellsAMove + (sets?.cells() ?? 0);
  const shaken = (): number => shaking.effort.moves * cellsAMove;
  const search = (ground: Ground, arcOf: Int32Array, patience: number): boolean =>
    incumbent.offer(localSearch(ground, layoutOf(graph, arcOf), patience, incumbent.cost() * (1 + slack)));

  return {
    hear(node, relaxed) {
      if (relaxed.bound === Number.POSITIVE_INFINITY) return;
      const solved = relaxed.times.every((times) => times === 1);
      if (!solved && !rested(heard(), hearShare)) return;
      const key = relaxed.chosen.join();
      const visit = (visits.get(key) ?? 0) + 1;
      visits.set(key, visit);
      // a set of points seen again is searched again more and more seldom, and longer
      if (!solved && (visit & (visit - 1)) !== 0) return;
      const layout = repair(graph, node, relaxed, usable);
      const ground = groundOf(hearing, node, usable);
      if (search(ground, layout.arcOf, 20 + 10 * visit)) {
        const best = incumbent.arcOf();
        if (best) search(ground, best, 200);
      }
    },
    begin(root, relaxed) {
      sets = makeSetSearch(graph, searching, incumbent, root, relaxed);
      if (graph.openExactly !== null) shakes ??= makeShaking(graph, shaking, incumbent);
    },
    step() {
      const go = (steps: SetSearch | Shaking | null, hasRested: () => boolean): void => {
        for (let k = 0; k < stepsANode && steps && !stopped() && hasRested(); k += 1) steps.step();
      };
      go(sets, () => rested(searched(), shakes ? setShareBesideShakes : setShare));
      go(shakes, () => rested(shaken(), shakeShare, staleShakeDivisor));
    },
  };
}

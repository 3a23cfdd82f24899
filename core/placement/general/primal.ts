import type { Graph } from "./graph.ts";
import { arcFinder, type Ground, groundOf } from "./ground.ts";
import type { Incumbent } from "./incumbent.ts";
import { layoutOf } from "./layout.ts";
import { localSearch } from "./localSearch.ts";
import type { Node } from "./node.ts";
import type { Relaxed, Relaxer } from "./relaxation.ts";
import { repair } from "./repair.ts";

/** Table cells that cost as much time as one move looked at. */
const cellsAMove = 6;
/** Moves a search may always look at, whatever the relaxation has worked. */
const firstMoves = 200_000;
/** Layouts dearer than the best by more than this part are not searched further. */
const slack = 0.1;

/** Turns relaxed solutions into layouts and offers them. */
export type Primal = { readonly hear: (node: Node, relaxed: Relaxed) => void };

/** Makes the primal side of a search: repair and local search, in balance with the work of the relaxation. */
export function makePrimal(
  graph: Graph,
  incumbent: Incumbent,
  relaxer: Relaxer,
  draw: () => number,
  stopped: () => boolean,
): Primal {
  const usable = new Uint8Array(graph.pointCount);
  const tools = { graph, arcAt: arcFinder(graph), draw, stopped, effort: { moves: 0 } };
  const visits = new Map<string, number>();

  const search = (ground: Ground, arcOf: Int32Array, patience: number): boolean =>
    incumbent.offer(localSearch(ground, layoutOf(graph, arcOf), patience, incumbent.cost() * (1 + slack)));

  return {
    hear(node, relaxed) {
      if (relaxed.bound === Number.POSITIVE_INFINITY) return;
      const solved = relaxed.times.every((times) => times === 1);
      const key = relaxed.chosen.join();
      const visit = (visits.get(key) ?? 0) + 1;
      const rested = tools.effort.moves * cellsAMove < firstMoves * cellsAMove + relaxer.effort.cells;
      if (!solved && !rested) return;
      visits.set(key, visit);
      // a set of points seen again is searched again more and more seldom, and longer
      if (!solved && (visit & (visit - 1)) !== 0) return;
      const layout = repair(graph, node, relaxed, usable);
      const ground = groundOf(tools, node, usable);
      if (search(ground, layout.arcOf, 20 + 10 * visit)) {
        const best = incumbent.arcOf();
        if (best) search(ground, best, 200);
      }
    },
  };
}

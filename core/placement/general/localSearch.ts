import { descend } from "./descent.ts";
import type { Graph } from "./graph.ts";
import type { Ground } from "./ground.ts";
import { costOf, type Found, type Layout } from "./layout.ts";
import { lookAround, makeMove, noMove, type Tabu } from "./moves.ts";
import { recentre, recentreAll } from "./recentre.ts";

/**
 * Local search from a layout: descent and recentring, then tabu search over shifts of one unit and swaps of two. Ports beyond a
 * capacity are fined; the fine rises while points are overloaded and falls while none is, so that the search crosses between
 * layouts that fill the points to the brim. Where the number of open points is given, the two points of a move are recentred at once:
 * with no opening to pay, a group that has changed is as a rule cheaper elsewhere.
 *
 * @param layout    left as the search ends
 * @param patience  moves without a better layout after which it ends
 * @param worthwhile  cost above which the descent is not followed by tabu search
 * @returns the best layout met that serves every unit within the capacities, null if none was
 */
export function localSearch(ground: Ground, layout: Layout, patience: number, worthwhile: number): Found | null {
  const { graph } = ground;
  const tabu: Tabu = { freeFrom: new Int32Array(graph.arcPoint.length), round: 0 };
  let fine = firstFine(graph);
  let best: Found | null = null;
  const keep = (): boolean => {
    const cost = costOf(graph, layout);
    if (cost < (best?.cost ?? Number.POSITIVE_INFINITY) - 1e-9) {
      best = { arcOf: layout.arcOf.slice(), cost };
      return true;
    }
    fine = cost === Number.POSITIVE_INFINITY ? Math.min(fine * 1.1, 1e12) : Math.max(fine / 1.1, 1e-6);
    return false;
  };
  do descend(ground, layout, fine, tabu);
  while (recentreAll(ground, layout, fine) && !ground.stopped());
  keep();
  if (((best as Found | null)?.cost ?? 0) > worthwhile) return best;
  for (let stale = 0; stale < patience && !ground.stopped(); stale += 1) {
    tabu.round += 1;
    const move = noMove();
    for (let unit = 0; unit < graph.unitCount; unit += 1) lookAround(ground, layout, fine, tabu, unit, unit, move);
    if (move.unit < 0) break;
    const until = tabu.round + 4 + Math.floor(ground.draw() * 8);
    tabu.freeFrom[layout.arcOf[move.unit]] = until;
    if (move.other >= 0) tabu.freeFrom[layout.arcOf[move.other]] = until;
    const left = graph.arcPoint[layout.arcOf[move.unit]];
    makeMove(graph, layout, move);
    if (graph.openExactly !== null) {
      recentre(ground, layout, fine, left);
      recentre(ground, layout, fine, graph.arcPoint[move.arc]);
    }
    if (keep()) stale = 0;
  }
  return best;
}

/** A fine in the order of what a port costs: to reach, and to hold. */
function firstFine(graph: Graph): number {
  const arcs = graph.arcCost.reduce((sum, cost) => sum + cost, 0) / Math.max(graph.arcCost.length, 1);
  let holding = 0;
  for (let module = 0; module < graph.moduleCost.length; module += 1) {
    holding += graph.moduleCost[module] / Math.max(graph.moduleCapacity[module], 1);
  }
  const aPort = arcs / Math.max(graph.demandSum / graph.unitCount, 1);
  return Math.max(aPort, 1e-3) + (2 * holding) / Math.max(graph.moduleCost.length, 1);
}

import type { Graph } from "./graph.ts";
import type { Ground } from "./ground.ts";
import { finedCost, type Layout, shift } from "./layout.ts";

/** A shift of one unit, or (`other` not -1) a swap of two, and by how much it changes the fined cost. */
export type Move = { unit: number; arc: number; other: number; otherArc: number; change: number };

/** Moves not to be made again before a round: by arc, the first round a unit may come back to it. */
export type Tabu = { readonly freeFrom: Int32Array; round: number };

/** No move yet; any is better. */
export function noMove(): Move {
  return { unit: -1, arc: -1, other: -1, otherArc: -1, change: Number.POSITIVE_INFINITY };
}

/**
 * Looks for the best shift of a unit, and the best swap with a unit of number `from` or more.
 *
 * @param move  overwritten by any better move
 */
export function lookAround(
  ground: Ground,
  layout: Layout,
  fine: number,
  tabu: Tabu,
  unit: number,
  from: number,
  move: Move,
): void {
  const { graph, usable, barred, fixedArc, arcAt } = ground;
  const { demand, arcCost, arcPoint, firstArc } = graph;
  const { arcOf, firstOn, nextOn } = layout;
  const present = arcOf[unit];
  if (present < 0 || fixedArc[unit] >= 0) return;
  const a = arcPoint[present];
  const ports = demand[unit];
  const heldA = finedCost(graph, layout, fine, a, 0, 0) + arcCost[present];
  const leaving = finedCost(graph, layout, fine, a, -ports, -1) - heldA;
  const leastA = graph.moduleCost[graph.firstModule[a]];
  const end = firstArc[unit + 1];
  let looked = 0;
  for (let arc = firstArc[unit]; arc < end; arc += 1) {
    const b = arcPoint[arc];
    if (b === a || usable[b] === 0 || barred[arc] === 1 || tabu.freeFrom[arc] > tabu.round) continue;
    looked += 1;
    const coming = arcCost[arc] - finedCost(graph, layout, fine, b, 0, 0);
    const change = leaving + coming + finedCost(graph, layout, fine, b, ports, 1);
    if (change < move.change) setMove(move, unit, arc, -1, -1, change);
    // a swap leaves both points at least their smallest modules
    const least = coming - heldA + leastA + graph.moduleCost[graph.firstModule[b]];
    for (let other = firstOn[b]; other >= 0; other = nextOn[other]) {
      if (other < from || fixedArc[other] >= 0) continue;
      const otherArc = arcAt(other, a);
      if (otherArc < 0 || barred[otherArc] === 1 || tabu.freeFrom[otherArc] > tabu.round) continue;
      looked += 1;
      const exchange = arcCost[otherArc] - arcCost[arcOf[other]];
      if (least + exchange >= move.change) continue;
      const more = demand[other] - ports;
      const swap =
        coming -
        heldA +
        exchange +
        finedCost(graph, layout, fine, a, more, 0) +
        finedCost(graph, layout, fine, b, -more, 0);
      if (swap < move.change) setMove(move, unit, arc, other, otherArc, swap);
    }
  }
  ground.effort.moves += looked;
}

function setMove(move: Move, unit: number, arc: number, other: number, otherArc: number, change: number): void {
  move.unit = unit;
  move.arc = arc;
  move.other = other;
  move.otherArc = otherArc;
  move.change = change;
}

/** Makes a move. */
export function makeMove(graph: Graph, layout: Layout, move: Move): void {
  shift(graph, layout, move.unit, move.arc);
  if (move.other >= 0) shift(graph, layout, move.other, move.otherArc);
}

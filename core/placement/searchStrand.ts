import { contiguousProgram } from "./contiguous.ts";
import { costOf, type Field, openField } from "./field.ts";
import type { KeptLayout } from "./keptLayout.ts";
import { partOf } from "./part.ts";
import { raisePrices } from "./prices.ts";
import type { Placement, Problem } from "./problem.ts";
import { climb, openPyramid } from "./pyramid.ts";
import { seatLeftOut } from "./seatLeftOut.ts";
import { slack, strandProgram } from "./strandProgram.ts";
import { sweepOrder } from "./sweep.ts";
import { unitOrderOf } from "./unitOrder.ts";

/** Rounds of the Lagrange bound: as many as a first layout needs, and from that on as many as still gain. */
const firstPriceRounds = 100;
const furtherPriceRounds = 200;
/** States of the first search: fewer where each unit reaches many points, so that a step asks as much. */
const beamWidth = 200;
const beamChoices = 1_500;
/** From a former layout on little is left to find. */
const beamWidthFromKept = 80;
/** States of the proof, each time it goes through the blocks that are still open. */
const proofWidths = [1_000, 8_000, 64_000, 512_000];
const unitsPerBlock = 64;

/**
 * Placement along a strand, a tree of strands or a grid of streets: contiguous program, Lagrange prices, strand program with few
 * states, then the proof by nested blocks with more and more.
 *
 * Yields what it has after each step; the first is there at once. The order of the steps does not depend on time. A unit that is
 * left out stands at -1 and costs more than any layout of the others.
 *
 * @param problem         one that hangs together
 * @param options.isQuick whether to end before the proof, which may take as long as it is let
 * @param options.start   a layout to better; null for none
 */
export function* searchStrand(
  problem: Problem,
  stopped: () => boolean,
  { isQuick, start }: { readonly isQuick: boolean; readonly start: KeptLayout | null },
): Generator<Placement> {
  const whole = openField(problem);
  const order = sweepOrder(whole);
  const units = Int32Array.from({ length: whole.unitCount }, (_, unit) => unit);
  const field = openField(partOf(problem, order, units).problem);
  let pointOf = firstLayout(field);
  let cost = costOf(field, pointOf);
  let bound = 0;
  const asGiven = (found: Int32Array) => found.map((point) => order[point] ?? -1);
  let given = asGiven(pointOf);
  const take = (found: Int32Array | null) => {
    const foundCost = found === null ? cost : costOf(field, found);
    if (found === null || foundCost >= cost) return;
    pointOf = found;
    given = asGiven(found);
    cost = foundCost;
  };
  const prove = (proven: number): Placement => {
    bound = Math.max(bound, proven);
    if (bound >= cost - slack(cost)) bound = cost;
    return { pointOf: given, cost, bound };
  };
  // On a grid of streets the order the points come in may be as good a row as the one swept.
  if (order.some((point, place) => point !== place)) take(placed(firstLayout(whole), order));
  if (start) take(placed(start.pointOf, order));
  yield prove(0);

  const first = raisePrices(field, mildCost(field, pointOf), null, firstPriceRounds, stopped);
  yield prove(first.bound);

  const reachCount = Math.ceil(problem.arcPoint.length / problem.demand.length);
  const width = Math.min(start ? beamWidthFromKept : beamWidth, Math.ceil(beamChoices / reachCount));
  const beam = { price: first.price, upper: cost, width, gains: [], stopped };
  const searched = strandProgram(field, beam);
  take(searched.pointOf);
  yield prove(searched.bound);

  if (isQuick) return;
  const prices = raisePrices(field, mildCost(field, pointOf), first.price, furtherPriceRounds, stopped);
  yield prove(prices.bound);

  const pyramid = openPyramid(field, prices.price, unitsPerBlock);
  for (const width of proofWidths)
    for (const { gain, better } of climb(pyramid, { pointOf, cost, width, stopped })) {
      take(better);
      yield prove(prices.bound + gain);
    }
}

/** A layout by the places of its points in an order. */
function placed(pointOf: Int32Array, order: Int32Array): Int32Array {
  const placeOf = new Map(Array.from(order, (point, place) => [point, place]));
  return pointOf.map((point) => placeOf.get(point) ?? -1);
}

/** The contiguous program over the units as they are numbered and as their drops say, whichever is cheaper; none left out for want of a move. */
function firstLayout(field: Field): Int32Array {
  const asNumbered = Int32Array.from({ length: field.unitCount }, (_, unit) => unit);
  const numbered = contiguousProgram(field, asNumbered);
  const along = contiguousProgram(field, unitOrderOf(field.problem));
  seatLeftOut(field, numbered);
  seatLeftOut(field, along);
  return costOf(field, numbered) < costOf(field, along) ? numbered : along;
}

/** The cost of a layout, units left out at the dearest module and drop there is: what a good layout of all may cost, not a penalty. */
function mildCost(field: Field, pointOf: Int32Array): number {
  let dearest = 0;
  for (const cost of field.loadCost) dearest = Math.max(dearest, cost);
  let dearestArc = 0;
  for (const cost of field.problem.arcCost) dearestArc = Math.max(dearestArc, cost);
  let cost = costOf(field, pointOf);
  pointOf.forEach((point, unit) => {
    if (point === -1) cost += dearest + dearestArc - field.leaveOutCost[unit];
  });
  return cost;
}

import { contiguousProgram } from "./contiguous.ts";
import { costOf, type Field, openField } from "./field.ts";
import { partOf } from "./part.ts";
import { raisePrices } from "./prices.ts";
import type { Placement, Problem } from "./problem.ts";
import { climb, openPyramid } from "./pyramid.ts";
import { slack, strandProgram } from "./strandProgram.ts";
import { sweepOrder } from "./sweep.ts";
import { unitOrderOf } from "./unitOrder.ts";

/** Rounds of the Lagrange bound: as many as a first layout needs, and from that on as many as still gain. */
const firstPriceRounds = 100;
const furtherPriceRounds = 200;
/** States of the first search, and of the proof, each time it goes through the blocks that are still open. */
const beamWidth = 200;
const proofWidths = [1_000, 8_000, 64_000, 512_000];
const unitsPerBlock = 64;

/**
 * Placement along a strand, a tree of strands or a grid of streets: contiguous program, Lagrange prices, strand program with few
 * states, then the proof by nested blocks with more and more.
 *
 * Yields what it has after each step; the first is there at once. The order of the steps does not depend on time. A unit that is
 * left out stands at -1 and costs more than any layout of the others.
 *
 * @param problem  one that hangs together
 */
export function* searchStrand(problem: Problem, stopped: () => boolean): Generator<Placement> {
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
  yield prove(0);

  const first = raisePrices(field, cost, null, firstPriceRounds, stopped);
  yield prove(first.bound);

  const beam = { price: first.price, upper: cost, width: beamWidth, gains: [], stopped };
  const searched = strandProgram(field, beam);
  take(searched.pointOf);
  yield prove(searched.bound);

  const prices = raisePrices(field, cost, first.price, furtherPriceRounds, stopped);
  yield prove(prices.bound);

  const pyramid = openPyramid(field, prices.price, unitsPerBlock);
  for (const width of proofWidths)
    for (const { gain, better } of climb(pyramid, { pointOf, cost, width, stopped })) {
      take(better);
      yield prove(prices.bound + gain);
    }
}

/** The contiguous program over the units as they are numbered and as their drops say, whichever is cheaper. */
function firstLayout(field: Field): Int32Array {
  const asNumbered = Int32Array.from({ length: field.unitCount }, (_, unit) => unit);
  const numbered = contiguousProgram(field, asNumbered);
  const along = contiguousProgram(field, unitOrderOf(field.problem));
  return costOf(field, numbered) < costOf(field, along) ? numbered : along;
}

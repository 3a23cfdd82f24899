import { type Completion, completionBounds } from "./completion.ts";
import { costOf, type Field } from "./field.ts";
import { clearLayer, cutLayer, type Layer, openLayer, putState } from "./layer.ts";
import { fieldMask, planSteps, type Steps } from "./steps.ts";

/** How the strand program is steered. */
type Steering = {
  /** by unit, as the Lagrange bound left them */
  readonly price: Float64Array;
  /** Only layouts of less cost are looked for. */
  readonly upper: number;
  /** Most states kept at a step. */
  readonly width: number;
  /** What is proven of groups of points beyond their completion bound; a gain counts until a unit of its group is given out. */
  readonly gains: readonly Gain[];
  readonly stopped: () => boolean;
};

/** What a group of points costs at least above the completion bound at the same prices, by itself. */
export type Gain = { readonly points: Int32Array; readonly gain: number };

/** What the strand program found. */
type ProgramAnswer = {
  /** Null where there is none below the upper cost, or none was found. */
  readonly pointOf: Int32Array | null;
  readonly cost: number;
  /** Proven: no layout costs less, nor less than the upper cost given. Minus infinity where it was stopped. */
  readonly bound: number;
  /** The completion bound at the start. */
  readonly plainBound: number;
};

/** The choice of a unit that is left out. */
const none = 65535;

/**
 * Exact placement along a strand, contiguity not assumed: a state is the load of each point in the window.
 *
 * Units are given out in order of the last point they reach; when a point leaves the window M(i, load) is paid. A state is dropped
 * when the cost so far and its completion bound reach the upper cost. The `width` states of least bound are kept; the least bound
 * ever cut is a proven lower bound, and where nothing is cut the answer is the best there is.
 *
 * Work grows with the units times the states; (capacity + 1)^window states at most, a few thousand in practice.
 *
 * @source dynamic program over a path decomposition; beam and bound after Lawler and Wood 1966
 */
export function strandProgram(field: Field, steering: Steering): ProgramAnswer {
  const steps = planSteps(field);
  const completion = completionBounds(field, steps.unitAt, steering.price);
  const upper = steering.upper - slack(steering.upper);
  const trail: { parent: Int32Array; choice: Uint16Array }[] = [];
  let layer = openLayer(steps.wordCount);
  let next = openLayer(steps.wordCount);
  clearLayer(layer);
  putState(layer, new Int32Array(steps.wordCount), completion.bound, 0, none);
  const ahead = gainsAhead(steps.firstStep, field.unitCount, steering.gains);
  const nothing = (bound: number) => ({
    pointOf: null,
    cost: Number.POSITIVE_INFINITY,
    bound,
    plainBound: completion.bound,
  });
  let cut = Number.POSITIVE_INFINITY;
  for (let step = 0; step < field.unitCount; step += 1) {
    if (steering.stopped()) return nothing(Number.NEGATIVE_INFINITY);
    clearLayer(next);
    giveOut({ field, steps, completion, price: steering.price, upper: upper - ahead[step + 1] }, step, layer, next);
    cut = Math.min(cut, cutLayer(next, steering.width) + ahead[step + 1]);
    if (next.count === 0) return nothing(Math.min(cut, steering.upper));
    trail.push({ parent: next.parent.slice(0, next.count), choice: next.choice.slice(0, next.count) });
    [layer, next] = [next, layer];
  }
  const pointOf = walkBack(field, steps, trail);
  const cost = costOf(field, pointOf);
  return { pointOf, cost, bound: Math.min(cut, cost), plainBound: completion.bound };
}

/** Rounding of sums of this size: a layout must be cheaper by more than this to count as cheaper. */
export function slack(cost: number): number {
  return 1e-9 * Math.abs(cost);
}

/** By step, the sum of the gains of groups none of whose units is given out yet. */
function gainsAhead(firstStep: Int32Array, unitCount: number, gains: readonly Gain[]): Float64Array {
  const ahead = new Float64Array(unitCount + 1);
  for (const { points, gain } of gains) {
    let first = unitCount;
    for (const point of points) first = Math.min(first, firstStep[point]);
    ahead[first] += gain;
  }
  for (let step = unitCount - 1; step >= 0; step -= 1) ahead[step] += ahead[step + 1];
  return ahead;
}

type Desk = {
  readonly field: Field;
  readonly steps: Steps;
  readonly completion: Completion;
  readonly price: Float64Array;
  readonly upper: number;
};

/** Gives one unit to each of its points in turn, from every state of a layer. */
function giveOut(desk: Desk, step: number, from: Layer, into: Layer): void {
  const { steps, upper, field } = desk;
  const { table, rowAfter, rowBefore } = desk.completion;
  const { firstArc, arcPoint, arcCost, demand } = field.problem;
  const { wordCount, wordOf, shiftOf, keep } = steps;
  const unit = steps.unitAt[step];
  const first = firstArc[unit];
  const last = firstArc[unit + 1];
  const mask = fieldMask(steps.bits);
  const word = new Int32Array(wordCount);
  for (let state = 0; state < from.count; state += 1) {
    const key = state * wordCount;
    let rest = from.value[state] - desk.price[unit];
    for (let arc = first; arc < last; arc += 1) {
      const point = arcPoint[arc];
      const load = (from.key[key + wordOf[point]] >>> shiftOf[point]) & mask;
      rest += table[rowAfter[arc] + load] - table[rowBefore[arc] + load];
    }
    for (let arc = first; arc < last; arc += 1) {
      const point = arcPoint[arc];
      const load = (from.key[key + wordOf[point]] >>> shiftOf[point]) & mask;
      if (load + demand[unit] > field.capacity[point]) continue;
      const row = rowAfter[arc] + load;
      const value = rest + arcCost[arc] + table[row + demand[unit]] - table[row];
      if (value >= upper) continue;
      for (let one = 0; one < wordCount; one += 1) word[one] = from.key[key + one];
      word[wordOf[point]] += demand[unit] << shiftOf[point];
      for (let one = 0; one < wordCount; one += 1) word[one] &= keep[step * wordCount + one];
      putState(into, word, value, state, arc - first);
    }
    const leftOut = rest + field.leaveOutCost[unit];
    if (leftOut >= upper) continue;
    for (let one = 0; one < wordCount; one += 1) word[one] = from.key[key + one] & keep[step * wordCount + one];
    putState(into, word, leftOut, state, none);
  }
}

/** After the last unit every point has left the window and one state is there. */
function walkBack(
  { problem, unitCount }: Field,
  steps: Steps,
  trail: readonly { parent: Int32Array; choice: Uint16Array }[],
): Int32Array {
  const pointOf = new Int32Array(unitCount).fill(-1);
  let state = 0;
  for (let step = unitCount - 1; step >= 0; step -= 1) {
    const { parent, choice } = trail[step];
    const unit = steps.unitAt[step];
    if (choice[state] !== none) pointOf[unit] = problem.arcPoint[problem.firstArc[unit] + choice[state]];
    state = parent[state];
  }
  return pointOf;
}

import { costOf, type Field, openField } from "./field.ts";
import { type Part, partOf } from "./part.ts";
import { type Gain, strandProgram } from "./strandProgram.ts";

/** A block of points with the two blocks it is made of. */
type Block = {
  readonly points: Int32Array;
  readonly halves: readonly Block[];
  /** Proven beyond the completion bound and the gains of the halves. */
  gain: number;
  /** Whether the block's value is known exactly. */
  isSolved: boolean;
};

/** A proof in the making: levels of blocks, smallest first; the last level is one block, the whole. */
export type Pyramid = {
  readonly field: Field;
  /** by unit */
  readonly price: Float64Array;
  readonly levels: readonly (readonly Block[])[];
  /** sum of the gains of all blocks */
  gain: number;
};

/** States kept of all steps of a block, for walking back: 6 bytes each. */
const mostKept = 3e7;

/** A layout to beat, and how far to go. */
type Climb = {
  readonly pointOf: Int32Array;
  readonly cost: number;
  /** Most states of a block at a step. */
  readonly width: number;
  readonly stopped: () => boolean;
};

/** The sum of all gains so far, and a better layout where the topmost block held one. */
type Climbed = { readonly gain: number; readonly better: Int32Array | null };

/**
 * Cuts the points into runs of about so many units, and joins them two by two up to the whole.
 *
 * @param price  by unit, as the Lagrange bound left them; they stay as they are
 */
export function openPyramid(field: Field, price: Float64Array, unitsPerBlock: number): Pyramid {
  let level = smallestBlocks(field, unitsPerBlock);
  const levels = [level];
  while (level.length > 1) {
    const next: Block[] = [];
    for (let block = 0; block < level.length; block += 2) next.push(joined(level.slice(block, block + 2)));
    levels.push(next);
    level = next;
  }
  return { field, price, levels, gain: 0 };
}

/**
 * Proves level by level what blocks of points cost at least.
 *
 * Units that points outside a block reach may be declined by it at their price; all others are to be served once, and the block is
 * solved by the strand program: V(b) = least cost of its layouts, declined units included. V(b) less the completion bound is the
 * block's gain. Gains of blocks that do not overlap add up, and those of the halves steer the program of the whole; so
 *
 *     plain Lagrange bound + sum of gains <= cost of any layout,
 *
 * and where the topmost block is solved the layout is the cheapest there is.
 *
 * Yields after each block; the caller may end it there.
 *
 * @source Lagrangian decomposition, Guignard and Kim 1987, nested
 */
export function* climb(pyramid: Pyramid, wishes: Climb): Generator<Climbed> {
  for (const level of pyramid.levels)
    for (const block of level) {
      if (block.isSolved) continue;
      if (wishes.stopped()) return;
      const found = solveBlock(pyramid, block, wishes);
      yield { gain: pyramid.gain, better: level.length === 1 ? found : null };
    }
}

/** The layout at hand, seen from the block, is the cost to beat; where there is none cheaper it is the block's value. */
function solveBlock(pyramid: Pyramid, block: Block, wishes: Climb): Int32Array | null {
  const { part, field } = fieldOf(pyramid, block);
  const numberOf = new Map(Array.from(block.points, (point, number) => [point, number]));
  const present = Int32Array.from(part.units, (unit) => numberOf.get(wishes.pointOf[unit]) ?? -1);
  const upper = costOf(field, present);
  const gains = gainsWithin(block, numberOf);
  const answer = strandProgram(field, {
    price: Float64Array.from(part.units, (unit) => pyramid.price[unit]),
    upper,
    width: Math.min(wishes.width, Math.ceil(mostKept / field.unitCount)),
    gains,
    stopped: wishes.stopped,
  });
  if (answer.bound === Number.NEGATIVE_INFINITY) return null;
  block.isSolved = answer.bound >= Math.min(upper, answer.cost);
  const known = gains.reduce((sum, { gain }) => sum + gain, answer.plainBound);
  const gain = Math.max(block.gain, answer.bound - known);
  pyramid.gain += gain - block.gain;
  block.gain = gain;
  if (answer.pointOf === null) return null;
  const better = wishes.pointOf.slice();
  part.units.forEach((unit, number) => {
    better[unit] = block.points[answer.pointOf?.[number] ?? -1] ?? -1;
  });
  return better;
}

/** The block's part of the problem with every unit it reaches; those that others reach too may be declined at their price. */
function fieldOf({ field: whole, price }: Pyramid, { points }: Block): { part: Part; field: Field } {
  const reached = new Set<number>();
  for (const point of points)
    for (let one = whole.firstPointArc[point]; one < whole.firstPointArc[point + 1]; one += 1)
      reached.add(whole.arcUnit[whole.pointArc[one]]);
  const part = partOf(whole.problem, points, Int32Array.from(reached).sort());
  const field = openField(part.problem);
  part.units.forEach((unit, number) => {
    const isOurs = arcCountOf(part.problem.firstArc, number) === arcCountOf(whole.problem.firstArc, unit);
    field.leaveOutCost[number] = isOurs ? whole.leaveOutCost[unit] : price[unit];
  });
  return { part, field };
}

function arcCountOf(firstArc: Int32Array, unit: number): number {
  return firstArc[unit + 1] - firstArc[unit];
}

function gainsWithin(block: Block, numberOf: ReadonlyMap<number, number>): Gain[] {
  return block.halves.flatMap((half) => [
    { points: half.points.map((point) => numberOf.get(point) ?? -1), gain: half.gain },
    ...gainsWithin(half, numberOf),
  ]);
}

function smallestBlocks(field: Field, unitsPerBlock: number): Block[] {
  const { problem, firstPointArc, pointArc, arcUnit } = field;
  const blocks: Block[] = [];
  let points: number[] = [];
  let units = 0;
  for (let point = 0; point < field.pointCount; point += 1) {
    points.push(point);
    for (let one = firstPointArc[point]; one < firstPointArc[point + 1]; one += 1)
      units += 1 / arcCountOf(problem.firstArc, arcUnit[pointArc[one]]);
    if (units < unitsPerBlock && point < field.pointCount - 1) continue;
    blocks.push({ points: Int32Array.from(points), halves: [], gain: 0, isSolved: false });
    points = [];
    units = 0;
  }
  return blocks;
}

function joined(halves: readonly Block[]): Block {
  const [only, other] = halves;
  if (only && !other) return only;
  return { points: Int32Array.from(halves.flatMap((half) => [...half.points])), halves, gain: 0, isSolved: false };
}

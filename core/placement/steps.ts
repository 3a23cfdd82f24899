import type { Field } from "./field.ts";

/**
 * The order in which the strand program gives out units, and where in a packed state the load of each point stands.
 *
 * A point is in the window from its first unit to its last; its load takes a slot of `bits` bits in one of `wordCount` words.
 */
export type Steps = {
  /** by step the unit given out */
  readonly unitAt: Int32Array;
  /** by point the step of its first unit */
  readonly firstStep: Int32Array;
  readonly bits: number;
  readonly wordCount: number;
  /** by point */
  readonly wordOf: Int32Array;
  readonly shiftOf: Int32Array;
  /** The bits that stay after a step, word by word: those of points whose last unit it was are cleared. */
  readonly keep: Int32Array;
};

/** Orders units by the last point they can reach, then by the first, and gives each point a slot while it is in the window. */
export function planSteps(field: Field): Steps {
  const { problem, unitCount, pointCount } = field;
  const { firstArc, arcPoint } = problem;
  const unitAt = Int32Array.from({ length: unitCount }, (_, unit) => unit).sort(
    (a, b) =>
      lastPoint(firstArc, arcPoint, a) - lastPoint(firstArc, arcPoint, b) ||
      firstPoint(firstArc, arcPoint, a) - firstPoint(firstArc, arcPoint, b) ||
      a - b,
  );
  const firstStep = new Int32Array(pointCount).fill(unitCount);
  const lastStep = new Int32Array(pointCount).fill(-1);
  unitAt.forEach((unit, step) => {
    for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1) {
      firstStep[arcPoint[arc]] = Math.min(firstStep[arcPoint[arc]], step);
      lastStep[arcPoint[arc]] = step;
    }
  });
  let most = 1;
  for (let point = 0; point < pointCount; point += 1) most = Math.max(most, field.capacity[point]);
  const bits = 32 - Math.clz32(most);
  const slots = giveSlots(field, unitAt, lastStep);
  const perWord = Math.floor(32 / bits);
  const wordCount = Math.max(1, Math.ceil(slots.count / perWord));
  const wordOf = slots.slotOf.map((slot) => Math.floor(slot / perWord));
  const shiftOf = slots.slotOf.map((slot) => (slot % perWord) * bits);
  const keep = new Int32Array(unitCount * wordCount).fill(-1);
  for (let point = 0; point < pointCount; point += 1)
    if (lastStep[point] >= 0) keep[lastStep[point] * wordCount + wordOf[point]] &= ~(fieldMask(bits) << shiftOf[point]);
  return { unitAt, firstStep, bits, wordCount, wordOf, shiftOf, keep };
}

/** The lowest `bits` bits set. */
export function fieldMask(bits: number): number {
  return bits === 32 ? -1 : (1 << bits) - 1;
}

function giveSlots(field: Field, unitAt: Int32Array, lastStep: Int32Array) {
  const { firstArc, arcPoint } = field.problem;
  const slotOf = new Int32Array(field.pointCount).fill(-1);
  const free: number[] = [];
  let count = 0;
  unitAt.forEach((unit, step) => {
    for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1) {
      const point = arcPoint[arc];
      if (slotOf[point] >= 0) continue;
      slotOf[point] = free.pop() ?? count;
      count = Math.max(count, slotOf[point] + 1);
    }
    for (let arc = firstArc[unit]; arc < firstArc[unit + 1]; arc += 1)
      if (lastStep[arcPoint[arc]] === step) free.push(slotOf[arcPoint[arc]]);
  });
  return { slotOf, count };
}

function lastPoint(firstArc: Int32Array, arcPoint: Int32Array, unit: number): number {
  return firstArc[unit + 1] > firstArc[unit] ? arcPoint[firstArc[unit + 1] - 1] : -1;
}

function firstPoint(firstArc: Int32Array, arcPoint: Int32Array, unit: number): number {
  return firstArc[unit + 1] > firstArc[unit] ? arcPoint[firstArc[unit]] : -1;
}

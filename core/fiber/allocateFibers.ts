import { type AllocationCost, allocationCost, compareAllocationCost } from "./allocationCost.ts";
import { fibersInOrder } from "./fibersInOrder.ts";
import { openFiberTaker } from "./fiberTaker.ts";
import type { TubedCable } from "./tubes.ts";

/** Fibers given to groups, and what that costs. */
export type FiberAllocation = AllocationCost & {
  /** Fibers of each group, ascending. */
  readonly groups: readonly (readonly number[])[];
};

/**
 * Fibers for groups in the order in which the cable is opened: adjacent ones of one tube wherever that can be.
 *
 * Next fit is the answer where it skips nothing but the rest of a tube: no allocation in order uses fewer tubes. Elsewhere the best
 * allocation in order is held against next fit, which may go back to a gap of an earlier tube, and the cheaper one is taken.
 *
 * @param counts fibers of each group, whole, 0 or more
 * @returns null where the cable has too few fibers
 */
export function allocateFibers(cable: TubedCable, counts: readonly number[]): FiberAllocation | null {
  const nextFit = takeInTurn(cable, counts);
  if (nextFit === null) return null;
  const costOfNextFit = allocationCost(cable, nextFit);
  const isBest = cable.taken.size === 0 && isRising(nextFit) && costOfNextFit.secondTubeCount === 0;
  const inOrder = isBest ? null : fibersInOrder(cable, counts);
  if (inOrder === null) return { groups: nextFit, ...costOfNextFit };
  const cost = allocationCost(cable, inOrder);
  return compareAllocationCost(cost, costOfNextFit) <= 0
    ? { groups: inOrder, ...cost }
    : { groups: nextFit, ...costOfNextFit };
}

/** How many tubes of a size hold these groups where nothing is in use: what a cable too small is answered with. */
export function tubesNeeded(counts: readonly number[], fibersPerTube: number, spareCount: number): number {
  const perTube = fibersPerTube - spareCount;
  if (!(perTube > 0)) throw new RangeError("a tube must have more fibers than are kept spare");
  return Math.ceil(counts.reduce((sum, count) => sum + count, 0) / perTube);
}

function takeInTurn(cable: TubedCable, counts: readonly number[]): (readonly number[])[] | null {
  const taker = openFiberTaker(cable);
  const groups: (readonly number[])[] = [];
  for (const count of counts) {
    const fibers = count === 0 ? [] : taker.take(count);
    if (fibers === null) return null;
    groups.push(fibers);
  }
  return groups;
}

function isRising(groups: readonly (readonly number[])[]): boolean {
  const fibers = groups.flat();
  return fibers.every((fiber, index) => fiber > (fibers[index - 1] ?? 0));
}

import { type TubedCable, tubeOfFiber } from "./tubes.ts";

/** What an allocation costs, in the order in which the figures count. */
export type AllocationCost = {
  /** Tubes opened at a group beyond its first one. */
  readonly secondTubeCount: number;
  /** Places where two neighbours of a group in one tube are not adjacent. */
  readonly breakCount: number;
  /** Tubes that hold a fiber of a group or a taken one. */
  readonly tubeCount: number;
  /** Free fibers below the highest given one that no group holds. */
  readonly skippedCount: number;
};

/**
 * Cost of fibers given to groups.
 *
 * @param groups fibers of each group, ascending; a group of none costs nothing
 */
export function allocationCost(cable: TubedCable, groups: readonly (readonly number[])[]): AllocationCost {
  const tubeOf = (fiber: number) => tubeOfFiber(fiber, cable.fibersPerTube);
  let secondTubeCount = 0;
  let breakCount = 0;
  for (const group of groups) {
    group.slice(1).forEach((fiber, index) => {
      const before = group[index] ?? 0;
      if (tubeOf(fiber) !== tubeOf(before)) secondTubeCount += 1;
      else if (fiber !== before + 1) breakCount += 1;
    });
  }
  const given = new Set(groups.flat());
  const highest = Math.max(0, ...given);
  const { fibersPerTube, spareCount, fiberCount, taken } = cable;
  let skippedCount = 0;
  for (let fiber = 1; fiber < highest; fiber += 1) {
    const size = Math.min(fibersPerTube, fiberCount - (tubeOf(fiber) - 1) * fibersPerTube);
    const isSpare = (fiber - 1) % fibersPerTube >= size - spareCount;
    if (!isSpare && !taken.has(fiber) && !given.has(fiber)) skippedCount += 1;
  }
  return { secondTubeCount, breakCount, tubeCount: new Set([...given, ...taken].map(tubeOf)).size, skippedCount };
}

/** Negative where the first cost is the better one, 0 where they are equal. */
export function compareAllocationCost(a: AllocationCost, b: AllocationCost): number {
  return (
    a.secondTubeCount - b.secondTubeCount ||
    a.breakCount - b.breakCount ||
    a.tubeCount - b.tubeCount ||
    a.skippedCount - b.skippedCount
  );
}

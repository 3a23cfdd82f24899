import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allocateFibers } from "../../core/fiber/allocateFibers.ts";
import { type AllocationCost, allocationCost, compareAllocationCost } from "../../core/fiber/allocationCost.ts";
import { fibersInOrder } from "../../core/fiber/fibersInOrder.ts";
import { openFiberTaker } from "../../core/fiber/fiberTaker.ts";
import { freeByTube, type TubedCable } from "../../core/fiber/tubes.ts";

/** Cables small enough for every allocation to be tried. */
const cable: fc.Arbitrary<TubedCable> = fc.record({
  fiberCount: fc.integer({ min: 1, max: 13 }),
  fibersPerTube: fc.integer({ min: 2, max: 6 }),
  spareCount: fc.integer({ min: 0, max: 1 }),
  taken: fc.array(fc.integer({ min: 1, max: 13 }), { maxLength: 4 }).map((list) => new Set(list)),
});
const groups = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 6 });

describe("fibers of up to six groups", () => {
  it("cost as little as the best of all allocations in order", () => {
    let compared = 0;
    fc.assert(
      fc.property(cable, groups, (given, counts) => {
        const best = cheapestOfAll(given, counts);
        const found = fibersInOrder(given, counts);
        expect(found === null).toBe(best === null);
        if (found === null || best === null) return;
        compared += 1;
        expect(found.map((one) => one.length)).toEqual(counts);
        expect(compareAllocationCost(allocationCost(given, found), best)).toBe(0);
      }),
      { numRuns: 400, seed: 3 },
    );
    expect(compared).toBeGreaterThan(150);
  });

  it("are by next fit the fewest tubes and the fewest skipped where nothing is in use and no group is split", () => {
    let compared = 0;
    fc.assert(
      fc.property(cable, groups, (given, counts) => {
        const bare = { ...given, taken: new Set<number>() };
        const taker = openFiberTaker(bare);
        const taken = counts.map((count) => (count === 0 ? [] : taker.take(count)));
        if (taken.some((one) => one === null)) return;
        const cost = allocationCost(
          bare,
          taken.map((one) => one ?? []),
        );
        const rises = taken.flatMap((one) => one ?? []).every((one, index, all) => one > (all[index - 1] ?? 0));
        const best = cheapestOfAll(bare, counts);
        if (!rises || cost.secondTubeCount > 0 || best === null) return;
        compared += 1;
        expect(compareAllocationCost(cost, best)).toBe(0);
      }),
      { numRuns: 400, seed: 4 },
    );
    expect(compared).toBeGreaterThan(100);
  });
});

describe("an allocation of any cable", () => {
  const large: fc.Arbitrary<TubedCable> = fc.record({
    fiberCount: fc.constantFrom(12, 24, 48, 96, 144, 288),
    fibersPerTube: fc.constantFrom(6, 12),
    spareCount: fc.integer({ min: 0, max: 3 }),
    taken: fc.array(fc.integer({ min: 1, max: 288 }), { maxLength: 12 }).map((list) => new Set(list)),
  });
  const many = fc.array(fc.integer({ min: 0, max: 14 }), { maxLength: 40 });

  it("gives no fiber twice, none in use, no spare, and each group what it asked; or the cable has too few", () => {
    fc.assert(
      fc.property(large, many, (given, counts) => {
        const found = allocateFibers(given, counts);
        const free = freeByTube(given).flat();
        const asked = counts.reduce((sum, count) => sum + count, 0);
        expect(found === null).toBe(asked > free.length);
        if (found === null) return;
        const fibers = found.groups.flat();
        expect(found.groups.map((one) => one.length)).toEqual(counts);
        expect(new Set(fibers).size).toBe(fibers.length);
        expect(fibers.filter((one) => !free.includes(one))).toEqual([]);
        for (const group of found.groups) expect(group).toEqual(group.toSorted((a, b) => a - b));
      }),
      { numRuns: 150, seed: 5 },
    );
  });

  it("is never dearer than the best in order, nor than next fit", () => {
    fc.assert(
      fc.property(large, many, (given, counts) => {
        const found = allocateFibers(given, counts);
        if (found === null) return;
        const inOrder = fibersInOrder(given, counts);
        const taker = openFiberTaker(given);
        const nextFit = counts.map((count) => taker.take(count) ?? []);
        for (const other of [inOrder ?? [], nextFit])
          expect(compareAllocationCost(found, allocationCost(given, other))).toBeLessThanOrEqual(0);
      }),
      { numRuns: 100, seed: 6 },
    );
  });
});

/** Every way to give rising fibers, one by one; null where there are too few. */
function cheapestOfAll(given: TubedCable, counts: readonly number[]): AllocationCost | null {
  const free = freeByTube(given).flat();
  const asked = counts.reduce((sum, count) => sum + count, 0);
  let best: AllocationCost | null = null;
  const tryFrom = (index: number, chosen: readonly number[]): void => {
    if (chosen.length === asked) {
      const cost = allocationCost(given, cut(chosen, counts));
      if (best === null || compareAllocationCost(cost, best) < 0) best = cost;
      return;
    }
    for (let next = index; next < free.length; next += 1) tryFrom(next + 1, [...chosen, free[next] ?? 0]);
  };
  tryFrom(0, []);
  return best;
}

function cut(fibers: readonly number[], counts: readonly number[]): (readonly number[])[] {
  let first = 0;
  return counts.map((count) => {
    first += count;
    return fibers.slice(first - count, first);
  });
}

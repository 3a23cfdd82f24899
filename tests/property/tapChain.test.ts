import fc from "fast-check";
import { expect, it } from "vitest";
import { idealSplitLossDb } from "../../core/fiber/splitterLoss.ts";
import { bestTapChain, tapChain } from "../../core/fiber/tapChain.ts";

const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
const offered = fc.array(share, { minLength: 1, maxLength: 3 });
const between = fc.array(fc.double({ min: 0, max: 2, noNaN: true }), { minLength: 2, maxLength: 5 });

it("no other chain of the taps that can be had has a better worst terminal", () => {
  fc.assert(
    fc.property(offered, between, (offeredFrac, betweenDb) => {
      const best = Math.max(...bestTapChain(offeredFrac, 0.3, betweenDb).lossesDb);
      for (const shares of chainsOf(offeredFrac, betweenDb.length - 1))
        expect(best).toBeLessThanOrEqual(Math.max(...tapChain(shares, 0.3, betweenDb).lossesDb) + 1e-9);
    }),
    { numRuns: 150, seed: 21 },
  );
});

it("no chain beats the even split of an ideal splitter", () => {
  fc.assert(
    fc.property(offered, between, (offeredFrac, betweenDb) => {
      const { lossesDb } = bestTapChain(offeredFrac, 0, betweenDb);
      expect(Math.max(...lossesDb)).toBeGreaterThanOrEqual(idealSplitLossDb(betweenDb.length) - 1e-9);
    }),
    { numRuns: 150, seed: 22 },
  );
});

function chainsOf(offeredFrac: readonly number[], count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return chainsOf(offeredFrac, count - 1).flatMap((rest) => offeredFrac.map((one) => [one, ...rest]));
}

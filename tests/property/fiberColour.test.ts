import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { colourAt, fiberPlace, lastColourPosition } from "../../core/fiber/colourCode.ts";
import { idealSplitLossDb, splitLossLimitDb, tapLossDb } from "../../core/fiber/splitterLoss.ts";

const position = fc.integer({ min: 1, max: lastColourPosition });

describe("the colour code", () => {
  it("tube and place in the tube give the fiber's number back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 864 }), fc.integer({ min: 6, max: 24 }), (fiber, fibersPerTube) => {
        const { tube, fiberInTube } = fiberPlace(fiber, fibersPerTube);
        expect((tube - 1) * fibersPerTube + fiberInTube).toBe(fiber);
        expect(fiberInTube).toBeLessThanOrEqual(fibersPerTube);
      }),
    );
  });

  it("no two positions share a colour or its letters", () => {
    fc.assert(
      fc.property(position, position, (one, other) => {
        expect(colourAt(one).name === colourAt(other).name).toBe(one === other);
        expect(colourAt(one).abbreviation === colourAt(other).abbreviation).toBe(one === other);
      }),
    );
  });
});

describe("splitting light", () => {
  it("two stages lose in all what one splitter of their product would at best", () => {
    const legs = fc.integer({ min: 2, max: 64 });
    fc.assert(
      fc.property(legs, legs, (first, second) => {
        expect(idealSplitLossDb(first) + idealSplitLossDb(second)).toBeCloseTo(idealSplitLossDb(first * second), 9);
        expect(splitLossLimitDb(first)).toBeGreaterThan(idealSplitLossDb(first));
      }),
    );
  });

  it("the two legs of a tap without excess share the light and lose none", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), (legFrac) => {
        const sharesFrac = [legFrac, 1 - legFrac].map((share) => 10 ** (-tapLossDb(share, 0) / 10));
        expect(sharesFrac.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      }),
    );
  });
});

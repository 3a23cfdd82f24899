import { expect, it } from "vitest";
import { bestTapChain, tapChain } from "../../../core/fiber/tapChain.ts";

it("each terminal loses what the taps before it pass on, its own tap and the fiber on the way", () => {
  const chain = tapChain([0.1, 0.5], 0, [1, 2, 3]);
  expect(chain.lossesDb[0]).toBeCloseTo(1 + 10, 9);
  expect(chain.lossesDb[1]).toBeCloseTo(1 + 0.4576 + 2 + 3.0103, 4);
  expect(chain.lossesDb[2]).toBeCloseTo(1 + 0.4576 + 2 + 3.0103 + 3, 4);
});

it("a chain of any shares without losses is split evenly", () => {
  const chain = bestTapChain([1 / 4, 1 / 3, 1 / 2], 0, [0, 0, 0, 0]);
  expect(chain.sharesFrac).toEqual([1 / 4, 1 / 3, 1 / 2]);
  for (const lossDb of chain.lossesDb) expect(lossDb).toBeCloseTo(10 * Math.log10(4), 9);
});

it("one terminal needs no tap", () => {
  expect(bestTapChain([], 0.3, [1.5])).toEqual({ sharesFrac: [], lossesDb: [1.5] });
});

it("taps that do not fit the terminals, or none to choose, are refused", () => {
  expect(() => tapChain([0.1], 0, [0, 0, 0])).toThrow("one tap fewer");
  expect(() => bestTapChain([], 0, [0, 0])).toThrow("needs a tap");
  expect(() => tapChain([0.5], 0, [0, -1])).toThrow("betweenDb");
});

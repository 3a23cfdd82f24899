import { describe, it } from "vitest";
import { idealSplitLossDb, splitLossLimitDb, tapLossDb } from "../../core/fiber/splitterLoss.ts";
import { tapChain } from "../../core/fiber/tapChain.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const splitters: Source = {
  document: "uniform splitter: 10 log10 N ideal; limit 0.8 + 3.4 log2 N in the style of GR-1209",
  edition: "limit formula from memory",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(splitters), () => {
  it.each([
    [2, "3.01", "4.2"],
    [4, "6.02", "7.6"],
    [8, "9.03", "11.0"],
    [16, "12.04", "14.4"],
    [32, "15.05", "17.8"],
    [64, "18.06", "21.2"],
  ] as const)("1 x %s loses %s dB at best and %s dB at most", (legCount, idealDb, limitDb) => {
    expectPrinted(idealSplitLossDb(legCount), idealDb);
    expectPrinted(splitLossLimitDb(legCount), limitDb);
  });
});

const taps: Source = {
  document: "unequal tap without excess: -10 log10 of the share",
  edition: "formula",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(taps), () => {
  it.each([
    [0.9, "0.46", "10.00"],
    [0.8, "0.97", "6.99"],
    [0.7, "1.55", "5.23"],
  ] as const)("a tap that keeps %s loses %s dB there and %s dB at the other leg", (legFrac, keptDb, tappedDb) => {
    expectPrinted(tapLossDb(legFrac, 0), keptDb);
    expectPrinted(tapLossDb(1 - legFrac, 0), tappedDb);
  });

  it("in a chain the through legs add up: 90/10 then 80/20 lose 10.00, 0.46 + 6.99 and 0.46 + 0.97 dB", () => {
    const { lossesDb } = tapChain([0.1, 0.2], 0, [0, 0, 0]);
    expectPrinted(lossesDb[0] ?? 0, "10.00");
    expectPrinted(lossesDb[1] ?? 0, "7.45");
    expectPrinted(lossesDb[2] ?? 0, "1.43");
  });
});

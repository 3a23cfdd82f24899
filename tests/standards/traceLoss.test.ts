import { describe, it } from "vitest";
import { meanLossDb } from "../../core/closeout/traceLimits.ts";
import { distanceM } from "../../core/traces/trace.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const twoWays: Source = {
  document: "mean of both directions, as IEC 61280-4-2 and TIA-455-8 ask for",
  edition: "none: the rule from memory, the figures worked out",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(twoWays), () => {
  it("0.18 dB one way and a gain of 0.06 dB the other are a splice of 0.06 dB", () => {
    expectPrinted(meanLossDb([0.18, -0.06]), "0.06");
  });
});

const distances: Source = {
  document: "distance of a reflectometer, t c / n",
  edition: "none",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(distances), () => {
  it("light that takes 24.69 us one way at an index of 1.468 has gone 5042.150 m", () => {
    expectPrinted(distanceM(24.69e-6, 1.468), "5042.150");
  });

  it("an index of 1.4677 for 1.4680 stretches 5 km by 1.02 m", () => {
    const timeS = 5000 / distanceM(1, 1.468);
    expectPrinted(distanceM(timeS, 1.4677) - 5000, "1.02");
  });
});

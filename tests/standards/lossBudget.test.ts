import { describe, expect, it } from "vitest";
import { lossPortTopic } from "../../core/calc/lossPortTopic.ts";
import { marginToMaxDb, marginToMinDb, pathLossDb } from "../../core/fiber/lossBudget.ts";
import { expectPrinted, type Source, sourceTitle } from "./source.ts";

const tutorial: Source = {
  document: "public tutorial page on loss budgets",
  edition: "no edition shown",
  mark: "seen",
  tolerance: "half the last printed digit",
};

describe(sourceTitle(tutorial), () => {
  it("10 km at 0.35 dB/km, a splice, two connectors and 3 dB of safety lose 7.51 dB", () => {
    const lossDb = pathLossDb(
      [{ lengthM: 10000, dbPerKm: 0.35 }],
      [
        { kind: "splice", lossDb: 0.01, count: 1 },
        { kind: "connector", lossDb: 0.5, count: 2 },
      ],
      3,
    );
    expectPrinted(lossDb, "7.51");
  });

  it("2 km at 1 dB/km with five connectors, two splices and 0.5 dB of modes leave 7 dB of a budget of 13 dB", () => {
    const lossDb = pathLossDb(
      [{ lengthM: 2000, dbPerKm: 1 }],
      [
        { kind: "connector", lossDb: 0.5, count: 5 },
        { kind: "splice", lossDb: 0.5, count: 2 },
        { kind: "higher-order modes", lossDb: 0.5, count: 1 },
      ],
      0,
    );
    expectPrinted(marginToMaxDb(lossDb, 13), "7");
    expect(marginToMaxDb(lossDb, 13)).toBeCloseTo(7, 12);
  });
});

const twoStage: Source = {
  document: "two-stage route of class B+ (13 to 28 dB): 7.65 km, 6 splices, 4 connections, 1 x 4 then 1 x 8",
  edition: "sum of the losses",
  mark: "computed",
  tolerance: "half the last digit",
};

describe(sourceTitle(twoStage), () => {
  const lossAtDb = (dbPerKm: number) =>
    pathLossDb(
      [6000, 1500, 150].map((lengthM) => ({ lengthM, dbPerKm })),
      [
        { kind: "splice", lossDb: 0.1, count: 6 },
        { kind: "connection", lossDb: 0.3, count: 4 },
        { kind: "splitter 1x4", lossDb: 7.3, count: 1 },
        { kind: "splitter 1x8", lossDb: 10.5, count: 1 },
      ],
      0,
    );

  it("the way up at 1310 nm loses 22.2775 dB and keeps 5.7225 dB to the class", () => {
    expectPrinted(lossAtDb(0.35), "22.2775");
    expectPrinted(marginToMaxDb(lossAtDb(0.35), 28), "5.7225");
  });

  it("the way down at 1490 nm loses 21.742 dB, over the 13 dB the class asks for", () => {
    expectPrinted(lossAtDb(0.28), "21.742");
    expectPrinted(marginToMinDb(lossAtDb(0.28), 13), "8.742");
  });

  it("from a hub of 1.5 to 5.0 dBm the unit receives -20.242 to -16.742 dBm", () => {
    expectPrinted(1.5 - lossAtDb(0.28), "-20.242");
    expectPrinted(5.0 - lossAtDb(0.28), "-16.742");
  });

  it("asked as the light of one port, the same figures stand in the reply", () => {
    const most = { upDb: expect.closeTo(22.2775, 9), downDb: expect.closeTo(21.742, 9) };
    expect(lossPortTopic.run(lossPortTopic.example)).toMatchObject({
      value: {
        most,
        marginToMaxDb: expect.closeTo(5.7225, 9),
        atUnitDbm: { leastDbm: expect.closeTo(-20.242, 9) },
        unitHeadroomDb: expect.closeTo(6.758, 9),
      },
    });
  });
});

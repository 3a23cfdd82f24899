import { describe, expect, it } from "vitest";
import { lossPortTopic } from "../../../core/calc/lossPortTopic.ts";

const path = {
  segments: [{ what: "fiber", lengthM: 10000, upDbPerKm: 0.35, downDbPerKm: 0.25 }],
  events: [{ what: "splices", count: 2, lossDb: 0.15, leastDb: 0.05 }],
  splitters: [{ what: "splitter", legCount: 8, maxLossDb: 10.5, typicalLossDb: 10.1 }],
};

function value(request: object): Record<string, unknown> {
  const answer = lossPortTopic.run(request);
  if (!answer.ok) throw new Error(answer.fault.what);
  return answer.value as Record<string, unknown>;
}

describe("the light of one port", () => {
  it("is told line by line, least and most, both ways", () => {
    const { terms, least, most, lengthM, ...rest } = value(path);
    expect(terms).toMatchObject([
      { what: "fiber", most: { upDb: 3.5, downDb: 2.5 } },
      { what: "splices", least: { upDb: 0.1 }, most: { downDb: 0.3 } },
      { what: "splitter", least: { downDb: 10.1 }, most: { upDb: 10.5 } },
    ]);
    expect(least).toEqual({ upDb: expect.closeTo(13.7, 9), downDb: expect.closeTo(12.7, 9) });
    expect(most).toEqual({ upDb: expect.closeTo(14.3, 9), downDb: expect.closeTo(13.3, 9) });
    expect(lengthM).toBe(10000);
    expect(rest).toEqual({});
  });

  it("is held against its class: both ends, reach, and the difference to the others of the hub output", () => {
    const others = [{ leastUpDb: 12, mostUpDb: 13, leastDownDb: 11, mostDownDb: 12 }];
    const opticalClass = { minLossDb: 13, maxLossDb: 28, differentialDb: 2, reachM: 9000 };
    expect(value({ ...path, marginDb: 1, opticalClass, others })).toMatchObject({
      marginToMaxDb: expect.closeTo(28 - 14.3 - 1, 9),
      marginToMinDb: expect.closeTo(12.7 - 13, 9),
      marginToReachM: -1000,
      differentialDb: expect.closeTo(14.3 - 12, 9),
      marginToDifferentialDb: expect.closeTo(2 - 2.3, 9),
    });
  });

  it("arrives at both ends with the power the senders leave, and overload is told", () => {
    const powers = {
      hubLaunch: { leastDbm: 1.5, mostDbm: 5 },
      unitReceive: { leastDbm: -27, mostDbm: -8 },
      unitLaunch: { leastDbm: 0.5, mostDbm: 5 },
      hubReceive: { leastDbm: -28, mostDbm: -9 },
    };
    expect(value({ ...path, marginDb: 1, powers })).toMatchObject({
      atUnitDbm: { leastDbm: expect.closeTo(1.5 - 13.3, 9), mostDbm: expect.closeTo(5 - 12.7, 9) },
      unitHeadroomDb: expect.closeTo(1.5 - 13.3 - 1 + 27, 9),
      unitOverloadDb: expect.closeTo(-8 - (5 - 12.7), 9),
      hubOverloadDb: expect.closeTo(-9 - (5 - 13.7), 9),
    });
    const { hubLaunch, unitReceive } = powers;
    expect(value({ ...path, powers: { hubLaunch, unitReceive } })).not.toHaveProperty("atHubDbm");
  });
});

it("a splitter is told by its legs, an unequal tap by its share, either by its maker's figure", () => {
  const most = (splitter: object) => value({ segments: [], events: [], splitters: [{ what: "s", ...splitter }] }).most;
  expect(most({ legCount: 8 })).toMatchObject({ upDb: expect.closeTo(0.8 + 3.4 * 3, 9) });
  expect(most({ shareFrac: 0.1, excessDb: 0.3 })).toMatchObject({ upDb: expect.closeTo(10.3, 9) });
  expect(most({ maxLossDb: 4 })).toEqual({ upDb: 4, downDb: 4 });
});

it.each([
  [{ what: "s" }, "s needs its legs, its share or its loss."],
  [{ what: "s", legCount: 2, shareFrac: 0.5 }, "s has legs or a share, not both."],
])("a splitter told too little or twice is refused: %#", (splitter, what) => {
  expect(lossPortTopic.run({ segments: [], events: [], splitters: [splitter] })).toMatchObject({
    ok: false,
    fault: { code: "out-of-range", what },
  });
});

import { describe, expect, it } from "vitest";
import { fibersTopic } from "../../../core/calc/fibersTopic.ts";

const cable = { fiberCount: 24, fibersPerTube: 12, spareFiberPerTubeCount: 2 };

/** Fibers by the group's name, and the figures beside them. */
function given(request: object) {
  const answer = fibersTopic.run(request);
  if (!answer.ok) throw new Error(answer.fault.what);
  const { allocation, ...cost } = answer.value as {
    readonly allocation: readonly { readonly name: string; readonly fibers: readonly { readonly fiber: number }[] }[];
  };
  return { ...Object.fromEntries(allocation.map((one) => [one.name, one.fibers.map((f) => f.fiber)])), ...cost };
}

describe("fibers of a cable of 24 in tubes of 12, two of each tube spare", () => {
  it("a terminal that does not fit what is left of a tube opens the next one, and the fibers passed over are told", () => {
    const demands = [{ fiberCount: 8 }, { fiberCount: 3 }];
    expect(given({ demands, cable })).toEqual({
      "group 1": [1, 2, 3, 4, 5, 6, 7, 8],
      "group 2": [13, 14, 15],
      secondTubeCount: 0,
      breakCount: 0,
      tubeCount: 2,
      skippedCount: 2,
    });
  });

  it("are told by tube and colour", () => {
    expect(fibersTopic.run({ demands: [{ name: "T", fiberCount: 1 }], cable: { ...cable, taken: [1] } })).toMatchObject(
      {
        value: {
          allocation: [
            {
              name: "T",
              fibers: [{ fiber: 2, tube: 1, tubeColour: "blue", fiberInTube: 2, fiberColour: "orange" }],
            },
          ],
        },
      },
    );
  });

  it("pass over pinned ones, which stay", () => {
    const demands = [{ fiberCount: 4 }, { name: "kept", fiberCount: 2, pinned: [3, 4] }];
    expect(given({ demands, cable })).toMatchObject({ "group 1": [5, 6, 7, 8], kept: [3, 4], breakCount: 0 });
  });

  it("are cut from two tubes only where no tube has enough, at the one opening that costs least", () => {
    const demands = [{ fiberCount: 8 }, { fiberCount: 8 }, { fiberCount: 4 }];
    expect(given({ demands, cable })).toMatchObject({ secondTubeCount: 1, tubeCount: 2 });
  });
});

describe("a cable too small", () => {
  const demands = [{ fiberCount: 20 }, { fiberCount: 1 }];

  it("is answered with the smallest of the sizes that fits", () => {
    expect(fibersTopic.run({ demands, cable, cableSizes: [96, 24, 48] })).toEqual({
      ok: false,
      fault: {
        code: "cable-too-small",
        what: "The cable has 20 fibers to give and 21 are asked.",
        where: "fibers",
        mend: "The smallest cable that fits has 48 fibers.",
      },
    });
  });

  it("is answered with the tubes it takes where no size is told", () => {
    expect(fibersTopic.run({ demands, cable })).toMatchObject({
      fault: { mend: "Take a cable of 3 tubes of 12 or ask for fewer." },
    });
  });
});

it.each([
  [
    { demands: [{ fiberCount: 2, pinned: [1] }], cable },
    "demands[0] must keep as many pinned fibers as its fiberCount.",
  ],
  [
    { demands: [{ fiberCount: 1, pinned: [1] }], cable: { ...cable, taken: [1] } },
    "fiber 1 cannot be taken or pinned twice.",
  ],
  [{ demands: [{ fiberCount: 1, pinned: [25] }], cable }, "fiber 25 lies beyond the cable's 24."],
])("pins that contradict each other or the cable are refused: %#", (request, what) => {
  expect(fibersTopic.run(request)).toMatchObject({ ok: false, fault: { code: "out-of-range", what } });
});

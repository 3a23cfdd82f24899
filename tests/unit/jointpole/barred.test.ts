import { describe, expect, it } from "vitest";
import { type Cause, freeHeights, type HeightRule } from "../../../core/jointpole/barred.ts";

function cause(ruleId: HeightRule): Cause {
  return {
    ruleId,
    against: { table: "pole", id: "pole-1" },
    spanId: null,
    condition: null,
    limit: "usableFromM",
    shares: { above: null, below: 1 },
  };
}

const road = { aboveM: Number.NEGATIVE_INFINITY, belowM: 5.5, cause: cause("crossing-clearance") };
const ground = { aboveM: Number.NEGATIVE_INFINITY, belowM: 4, cause: cause("ground-clearance") };
const telephone = { aboveM: 6, belowM: 6.6, cause: cause("communication-separation-at-pole") };
const neutral = { aboveM: 7.2, belowM: Number.POSITIVE_INFINITY, cause: cause("supply-separation-at-pole") };

describe("what barred heights leave free", () => {
  it("is everything above the ground where nothing bars", () => {
    expect(freeHeights([])).toEqual([{ fromM: 0, toM: Number.POSITIVE_INFINITY, from: null, to: null }]);
  });

  it("lies under and over another party's cable, each end set by what bars the most", () => {
    expect(freeHeights([neutral, telephone, ground, road])).toEqual([
      { fromM: 5.5, toM: 6, from: road.cause, to: telephone.cause },
      { fromM: 6.6, toM: 7.2, from: telephone.cause, to: neutral.cause },
    ]);
  });

  it("is nothing where the road asks for more than the neutral leaves", () => {
    expect(freeHeights([{ ...road, belowM: 7.3 }, neutral])).toEqual([]);
  });

  it("is a single height where two bars just touch", () => {
    expect(freeHeights([{ ...road, belowM: 7.2 }, neutral])).toEqual([
      { fromM: 7.2, toM: 7.2, from: road.cause, to: neutral.cause },
    ]);
  });

  it("is not cut by what bars nothing", () => {
    expect(freeHeights([{ ...telephone, belowM: 6 }])).toHaveLength(1);
  });
});

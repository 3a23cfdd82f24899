import { describe, expect, test } from "vitest";
import { countSheath, type MarkRead } from "../../../core/closeout/sheathMarks.ts";

const inFeet = { unitM: 0.3048, toleranceFrac: 0.01, toleranceM: 1 };

/** Poles 50 m apart along the sheath with the figures read there. */
function poles(...figures: readonly number[]): readonly MarkRead[] {
  return figures.map((figure, index) => ({ place: `M${index + 1}`, drawnM: index * 50, figure }));
}

describe("sheath marks read pole by pole", () => {
  test("are as drawn where each section is as long as it is drawn", () => {
    const { counts, sections, doubted } = countSheath(poles(12000, 12164, 12328, 12492), inFeet);
    expect(counts).toBe("up");
    expect(doubted).toEqual([]);
    expect(sections.map((one) => one.isAsDrawn)).toEqual([true, true, true]);
    expect(sections[0]?.usedM).toBeCloseTo(49.99, 2);
  });

  test("may count down, where the reel was turned", () => {
    expect(countSheath(poles(12492, 12328, 12164), inFeet)).toMatchObject({ counts: "down", doubted: [] });
  });

  test("with two digits exchanged are doubted, and the figure meant is offered", () => {
    const { doubted, sections } = countSheath(poles(12000, 12614, 12328, 12492), inFeet);
    expect(doubted).toEqual([{ place: "M2", figure: 12614, perhaps: 12164 }]);
    expect(sections.map((one) => [one.from, one.to, one.isAsDrawn])).toEqual([
      ["M1", "M3", true],
      ["M3", "M4", true],
    ]);
  });

  test("out of order are doubted, even where nothing else speaks against them", () => {
    const { doubted } = countSheath(poles(12000, 12164, 11000), inFeet);
    expect(doubted).toEqual([{ place: "M3", figure: 11000, perhaps: null }]);
  });

  test("tell a coil that was not left as missing, in its own section", () => {
    const { doubted, sections } = countSheath(poles(12000, 12164, 12264, 12428), inFeet);
    expect(doubted).toEqual([]);
    expect(sections[1]).toMatchObject({ from: "M2", to: "M3", isAsDrawn: false });
    expect(sections[1]?.moreM).toBeCloseTo(100 * 0.3048 - 50, 6);
  });

  test("say nothing of a direction where only one is there", () => {
    expect(countSheath(poles(12000), inFeet)).toEqual({ counts: null, sections: [], doubted: [] });
    expect(countSheath([], inFeet)).toEqual({ counts: null, sections: [], doubted: [] });
  });

  test("must be told in order along the cable", () => {
    expect(() => countSheath(poles(1, 2).toReversed(), inFeet)).toThrow("in order along the cable");
    expect(() => countSheath([], { ...inFeet, unitM: 0 })).toThrow("unitM");
  });
});

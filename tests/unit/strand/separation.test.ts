import { describe, expect, it } from "vitest";
import { leastSeparation, separationAtM, type Wire } from "../../../core/strand/separation.ts";

const upper: Wire = { spanM: 40, riseM: 0, weightNPerM: 6, horizontalN: 1500, nearHeightM: 8 };
const lower: Wire = { ...upper, weightNPerM: 3, nearHeightM: 7 };

describe("separation of two wires", () => {
  it("a slacker wire over a tauter comes nearest at midspan", () => {
    expect(leastSeparation(upper, lower)).toEqual({ leastM: expect.closeTo(0.6, 12), atM: 20 });
  });

  it("a tauter wire over a slacker comes nearest at the pole where they hang closest", () => {
    const low = { ...lower, weightNPerM: 9, riseM: 0.5 };
    expect(leastSeparation(upper, low)).toEqual({ leastM: expect.closeTo(0.5, 12), atM: 40 });
  });

  it("a coil on the upper wire brings it nearest there", () => {
    const least = leastSeparation({ ...upper, pointLoads: [{ atM: 10, weightN: 200 }] }, lower);
    expect(least.atM).toBe(10);
    expect(least.leastM).toBeCloseTo(1 - 0.3 - (200 * 10 * 0.75) / 1500, 9);
  });

  it("nowhere along the span are two loaded wires nearer than told", () => {
    const low = { ...lower, riseM: 0.4, pointLoads: [{ atM: 31, weightN: 50 }] };
    const high = { ...upper, riseM: -0.3, pointLoads: [{ atM: 8, weightN: 90 }] };
    const { leastM, atM } = leastSeparation(high, low);
    expect(separationAtM(high, low, atM)).toBe(leastM);
    for (let at = 0; at <= 40; at += 0.05) {
      expect(separationAtM(high, low, at)).toBeGreaterThanOrEqual(leastM - 1e-12);
    }
  });

  it("wires that cross are apart by less than nothing", () => {
    expect(leastSeparation({ ...upper, nearHeightM: 7.2 }, lower).leastM).toBeCloseTo(-0.2, 12);
  });

  it("wires of different spans cannot be set against each other", () => {
    expect(() => leastSeparation(upper, { ...lower, spanM: 41 })).toThrow(RangeError);
  });
});

import { describe, expect, it } from "vitest";
import type { FreeHeights } from "../../../core/jointpole/barred.ts";
import { nearestWholeHeightM } from "../../../core/jointpole/wholeHeight.ts";

const free = (...ends: readonly (readonly [number, number])[]): FreeHeights[] =>
  ends.map(([fromM, toM]) => ({ fromM, toM, from: null, to: null }));

const inch = 0.0254;

describe("the nearest free height a tape reads off", () => {
  it("is rounded inwards at either end: up from below, down from above", () => {
    const range = free([220.3 * inch, 240.7 * inch]);
    expect(nearestWholeHeightM(range, 5, "us")).toBeCloseTo(221 * inch, 9);
    expect(nearestWholeHeightM(range, 7, "us")).toBeCloseTo(240 * inch, 9);
  });

  it("is the end itself where the end is a whole inch", () => {
    expect(nearestWholeHeightM(free([222 * inch, 240 * inch]), 5, "us")).toBeCloseTo(222 * inch, 9);
  });

  it("is the whole centimetre nearest to a height that is free already", () => {
    expect(nearestWholeHeightM(free([5, 7]), 6.123, "metric")).toBeCloseTo(6.12, 9);
  });

  it("lies in the nearer of two ranges", () => {
    const both = free([5, 5.5], [6.1, 7]);
    expect(nearestWholeHeightM(both, 5.9, "metric")).toBeCloseTo(6.1, 9);
    expect(nearestWholeHeightM(both, 5.6, "metric")).toBeCloseTo(5.5, 9);
  });

  it("is none in a range too narrow for a whole inch, or where nothing is free", () => {
    expect(nearestWholeHeightM(free([220.2 * inch, 220.8 * inch]), 5, "us")).toBeNull();
    expect(nearestWholeHeightM([], 5, "us")).toBeNull();
  });

  it("has no upper end where nothing known is above", () => {
    expect(nearestWholeHeightM(free([5.501, Number.POSITIVE_INFINITY]), 5, "metric")).toBeCloseTo(5.51, 9);
  });
});

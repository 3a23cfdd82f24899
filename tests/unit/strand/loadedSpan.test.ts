import { describe, expect, it } from "vitest";
import { beamOf, type LoadedSpan, loadedHeightM, loadedSagM } from "../../../core/strand/loadedSpan.ts";
import { parabolicSagM } from "../../../core/strand/parabola.ts";
import { sagAtM } from "../../../core/strand/sagAt.ts";

const plain: LoadedSpan = { spanM: 40, riseM: 0, weightNPerM: 3, horizontalN: 1500 };
const hung: LoadedSpan = {
  ...plain,
  pointLoads: [
    { atM: 10, weightN: 60 },
    { atM: 30, weightN: 30 },
  ],
};

describe("a loaded span", () => {
  it("hangs as a plain one where nothing hangs in it", () => {
    expect(loadedSagM(plain, 20)).toBe(parabolicSagM(40, 3, 1500));
    expect(loadedSagM(plain, 7)).toBeCloseTo(sagAtM(40, 3, 1500, 7), 12);
  });

  it("hangs lower by the moment of each load over the tension", () => {
    const addedM = loadedSagM(hung, 20) - loadedSagM(plain, 20);
    expect(addedM).toBeCloseTo((60 * 10 * (20 / 40) + 30 * 20 * (10 / 40)) / 1500, 12);
  });

  it("is tied at its supports", () => {
    expect([loadedSagM(hung, 0), loadedSagM(hung, 40)]).toEqual([0, 0]);
    expect([loadedHeightM({ ...hung, riseM: 2 }, 0), loadedHeightM({ ...hung, riseM: 2 }, 40)]).toEqual([0, 2]);
  });

  it("weighs more along a slope, by the length of its chord", () => {
    expect(beamOf({ ...plain, riseM: 30 }).runNPerM).toBeCloseTo(3 * (50 / 40), 12);
    expect(loadedHeightM({ ...plain, riseM: 30 }, 20)).toBeCloseTo(15 - loadedSagM(plain, 20) * (50 / 40), 12);
  });

  it.each([
    [{ ...hung, spanM: 20 }, 5],
    [hung, 41],
    [hung, Number.NaN],
    [{ ...hung, horizontalN: 0 }, 5],
  ])("what does not hang in the span is refused", (span, atM) => {
    expect(() => loadedSagM(span, atM)).toThrow(RangeError);
  });
});

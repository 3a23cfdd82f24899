import { describe, expect, it } from "vitest";
import { linePull } from "../../../core/strand/linePull.ts";
import { degFromRad, radFromDeg } from "../../../core/units/angle.ts";

const pull = (behindN: number, aheadN: number, deg: number) => {
  const { pullN, directionRad } = linePull(behindN, aheadN, radFromDeg(deg));
  return [pullN, degFromRad(directionRad)];
};

describe("pull of a line on a pole", () => {
  it("a straight line of one tension pulls nowhere", () => {
    expect(linePull(1000, 1000, 0).pullN).toBe(0);
  });

  it("unbalanced dead ends pull with their difference, the way of the stronger", () => {
    expect(pull(1000, 1300, 0)).toEqual([300, 0]);
    expect(pull(1300, 1000, 0)).toEqual([300, 180]);
  });

  it("a dead end pulls back, the first pole of a line forward", () => {
    expect(pull(1000, 0, 0)).toEqual([1000, 180]);
    expect(pull(0, 1000, 0)).toEqual([1000, 0]);
  });

  it("a turn pulls into the bend, half way between the two spans", () => {
    const [pullN, directionDeg] = pull(1000, 1000, 30);
    expect(pullN).toBeCloseTo(2000 * Math.sin(radFromDeg(15)), 9);
    expect(directionDeg).toBeCloseTo(105, 9);
  });

  it("a turn of a hundredth of a degree keeps the digits of its pull", () => {
    expect((pull(1000, 1000, 0.01)[0] ?? 0) / (2000 * Math.sin(radFromDeg(0.005)))).toBeCloseTo(1, 12);
  });

  it.each([
    [-1, 1, 0],
    [1, Number.NaN, 0],
    [1, 1, 4],
    [1, 1, Number.NaN],
  ])("a pull of %d and %d at %d rad is refused", (behindN, aheadN, deflectionRad) => {
    expect(() => linePull(behindN, aheadN, deflectionRad)).toThrow(RangeError);
  });
});

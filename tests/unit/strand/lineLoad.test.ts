import { describe, expect, it } from "vitest";
import { lineLoad } from "../../../core/strand/lineLoad.ts";

const bare = { diameterM: 0.02, weightNPerM: 3, iceM: 0, windPa: 0, constantNPerM: 0 };

describe("load of a bundle", () => {
  it("in still air without ice it is its own weight, hanging straight", () => {
    expect(lineLoad(bare)).toEqual({
      iceNPerM: 0,
      verticalNPerM: 3,
      windNPerM: 0,
      resultantNPerM: 3,
      totalNPerM: 3,
      swingRad: 0,
    });
  });

  it("the constant adds to the total alone", () => {
    const load = lineLoad({ ...bare, windPa: 200, constantNPerM: 4.4 });
    expect(load).toMatchObject({ windNPerM: 4, resultantNPerM: 5 });
    expect(load.totalNPerM).toBeCloseTo(9.4, 12);
  });

  it("wind presses on the ice too", () => {
    expect(lineLoad({ ...bare, iceM: 0.01, windPa: 200 }).windNPerM).toBeCloseTo(8, 12);
  });

  it("ice weighs 913 kg/m3 unless told otherwise", () => {
    const ice = { ...bare, iceM: 0.0127 };
    expect(lineLoad(ice)).toEqual(lineLoad({ ...ice, iceDensityKgPerM3: 913 }));
    expect(lineLoad({ ...ice, iceDensityKgPerM3: 456.5 }).iceNPerM).toBeCloseTo(lineLoad(ice).iceNPerM / 2, 12);
  });

  it.each(["weightNPerM", "iceM", "iceDensityKgPerM3", "windPa", "constantNPerM"])(
    "%s below nought or of no number is refused",
    (name) => {
      expect(() => lineLoad({ ...bare, [name]: -1 })).toThrow(`${name} must be 0 or more`);
      expect(() => lineLoad({ ...bare, [name]: Number.NaN })).toThrow(RangeError);
    },
  );

  it("a bundle without thickness is refused", () => {
    expect(() => lineLoad({ ...bare, diameterM: 0 })).toThrow("diameterM");
  });

  it("loads past all number are refused rather than infinite", () => {
    expect(() => lineLoad({ ...bare, windPa: 1e308, diameterM: 1e10 })).toThrow("totalNPerM");
  });
});

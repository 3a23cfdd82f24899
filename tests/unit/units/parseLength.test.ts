import { describe, expect, it } from "vitest";
import { parseLengthM } from "../../../core/units/parseLength.ts";

describe("reading a length", () => {
  it.each([
    ["36 in", 0.9144],
    ["36in", 0.9144],
    ['36"', 0.9144],
    ["3'", 0.9144],
    ["3 ft", 0.9144],
    ["1 foot", 0.3048],
    ["10 ft 6 in", 3.2004],
    [`10' 6"`, 3.2004],
    [`10'-6"`, 3.2004],
    ["10\u2032 6\u2033", 3.2004],
    ["10' 6", 3.2004],
    ["10 ft. 6 in.", 3.2004],
    [`10' 6 1/2"`, 3.2131],
    ["1/2 in", 0.0127],
    ['3 1/2"', 0.0889],
    ['3-1/2"', 0.0889],
    ["18.5 ft", 5.6388],
    ["0.9 m", 0.9],
    ["0.9 metres", 0.9],
    ["90 cm", 0.9],
    ["900 mm", 0.9],
    ["1.2 km", 1200],
    ["  36   IN ", 0.9144],
    ["-3' 6\"", -1.0668],
    ["\u22120.5 m", -0.5],
    ["+2 m", 2],
    [".5 m", 0.5],
  ])("%s is exact to the last bit", (text, valueM) => {
    expect(parseLengthM(text, "us")).toEqual({ ok: true, valueM });
  });

  it("a plain number is feet or metres as the route is set", () => {
    expect(parseLengthM("36", "us")).toEqual({ ok: true, valueM: 10.9728 });
    expect(parseLengthM("36", "metric")).toEqual({ ok: true, valueM: 36 });
  });

  it("nought is nought, never minus nought", () => {
    expect(parseLengthM("-0", "metric")).toEqual({ ok: true, valueM: 0 });
  });

  it.each(["1,5 m", "1,200 ft"])("a comma in %s is refused with what to write instead", (text) => {
    expect(parseLengthM(text, "metric")).toEqual({
      ok: false,
      what: `"${text}" has a comma in a number.`,
      mend: "Write decimals with a point and thousands without a mark: 1234.5.",
    });
  });

  it("a foot or more of inches after feet is refused", () => {
    expect(parseLengthM(`10' 14"`, "us")).toMatchObject({ ok: false, what: "14 inches after feet is a foot or more." });
  });

  it.each(["", "tall", "3 furlongs", "10.5' 6\"", "1/0 in", "3 ft 2 m", "--3", "1e3", "NaN", "9".repeat(400)])(
    "%s is refused as no length",
    (text) => {
      expect(parseLengthM(text, "us")).toMatchObject({ ok: false, what: `"${text}" cannot be read as a length.` });
    },
  );
});

import { describe, expect, it } from "vitest";
import { formatLength, type LengthStyle } from "../../../core/units/formatLength.ts";

describe("printing a length", () => {
  it.each<[LengthStyle, number, string, string]>([
    ["span", 45.1104, "148 ft", "45.1 m"],
    ["drop", 29.0, "95 ft", "29.0 m"],
    ["height", 5.6388, "18 ft 6 in", "5.64 m"],
    ["clearance", 5.6388, "18 ft 6 in", "5.63 m"],
    ["offset", 0.9144, "36 in", "0.91 m"],
    ["sag", 0.3777, "14.9 in", "0.378 m"],
  ])("a %s of %s m reads %s or %s", (style, valueM, us, metric) => {
    expect(formatLength(valueM, "us", style)).toBe(us);
    expect(formatLength(valueM, "metric", style)).toBe(metric);
  });

  it("a height just under a foot carries to the foot, not to 12 in", () => {
    expect(formatLength(5.4863, "us", "height")).toBe("18 ft 0 in");
  });

  it("a height under a foot is inches alone", () => {
    expect(formatLength(0.2032, "us", "height")).toBe("8 in");
  });

  it("a clearance a hair under 18 ft 6 in reads 18 ft 5 in", () => {
    expect(formatLength(5.6387, "us", "clearance")).toBe("18 ft 5 in");
    expect(formatLength(5.6387, "us", "height")).toBe("18 ft 6 in");
  });

  it("a clearance lost in arithmetic noise still reads as typed", () => {
    expect(formatLength(5.64 - 1e-12, "metric", "clearance")).toBe("5.64 m");
  });

  it("strand below the surface reads as a worse negative clearance", () => {
    expect(formatLength(-0.001, "metric", "clearance")).toBe("-0.01 m");
    expect(formatLength(-1.0668, "us", "clearance")).toBe("-3 ft 6 in");
  });

  it("a span too short to print is 0 ft, without a minus", () => {
    expect(formatLength(-0.01, "us", "span")).toBe("0 ft");
  });

  it("what is no number is not printed", () => {
    expect(() => formatLength(Number.NaN, "us", "span")).toThrow(RangeError);
    expect(() => formatLength(Number.POSITIVE_INFINITY, "metric", "clearance")).toThrow(RangeError);
    expect(() => formatLength(Number.NaN, "us", "height")).toThrow(RangeError);
  });
});

import { describe, expect, it } from "vitest";
import { marginToMaxDb, marginToMinDb, pathLossDb } from "../../../core/fiber/lossBudget.ts";

const splice = { kind: "splice", lossDb: 0.1, count: 2 };

describe("loss of a light path", () => {
  it("an empty path loses nothing but its margin", () => {
    expect(pathLossDb([], [], 0)).toBe(0);
    expect(pathLossDb([], [], 3)).toBe(3);
  });

  it("too much loss and too much light both read as negative margins", () => {
    expect(marginToMaxDb(29, 28)).toBe(-1);
    expect(marginToMinDb(12, 13)).toBe(-1);
  });

  it("a gain, half a splice or a length of no number is refused by name", () => {
    expect(() => pathLossDb([], [{ ...splice, lossDb: -0.1 }], 0)).toThrow("lossDb of splice");
    expect(() => pathLossDb([], [{ ...splice, count: 0.5 }], 0)).toThrow("count of splice");
    expect(() => pathLossDb([{ lengthM: Number.NaN, dbPerKm: 0.35 }], [], 0)).toThrow("lengthM");
    expect(() => pathLossDb([{ lengthM: 1, dbPerKm: -0.35 }], [], 0)).toThrow("dbPerKm");
    expect(() => pathLossDb([], [], -3)).toThrow("marginDb");
    expect(() => marginToMaxDb(Number.NaN, 28)).toThrow(RangeError);
    expect(() => marginToMinDb(20, Number.NaN)).toThrow(RangeError);
  });
});

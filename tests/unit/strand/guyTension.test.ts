import { describe, expect, test } from "vitest";
import { guyTensionN } from "../../../core/strand/guyTension.ts";

describe("guyTensionN", () => {
  test("1045.87 lbf held 24 ft up with 16 ft of lead pulls 1885.5 lbf along the guy [computed]", () => {
    expect(guyTensionN(1045.87, 24, 16)).toBeCloseTo(1885.5, 1);
  });

  test("a guy without lead is refused", () => {
    expect(() => guyTensionN(1, 1, 0)).toThrow(RangeError);
  });
});

import { describe, expect, it } from "vitest";
import { isOver, isUnder } from "../../../core/rules/withinLimit.ts";

describe("a figure against its limit", () => {
  it("of 40 in against 40 in is neither under nor over, whatever the sums left behind", () => {
    const measured = 24 * 0.3048 - 248 * 0.0254;
    expect(measured).not.toBe(1.016);
    expect([isUnder(measured, 1.016), isOver(measured, 1.016)]).toEqual([false, false]);
  });

  it("a micrometre off is under or over", () => {
    expect([isUnder(1.015999, 1.016), isOver(1.016001, 1.016)]).toEqual([true, true]);
  });
});

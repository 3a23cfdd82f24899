import { expect, it } from "vitest";
import { rulingSpanM } from "../../../core/strand/rulingSpan.ts";

it("one span rules itself", () => {
  expect(rulingSpanM([42])).toBe(42);
});

it("spans of any size are ruled without overflow", () => {
  expect(rulingSpanM([1e150, 1e150])).toBe(1e150);
});

it.each([[[]], [[40, 0]], [[40, Number.NaN]], [[40, Number.POSITIVE_INFINITY]]])("%j is no row of spans", (spansM) => {
  expect(() => rulingSpanM(spansM)).toThrow(RangeError);
});

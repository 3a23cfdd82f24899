import { expect, it } from "vitest";
import { requireFiniteCurve, requireHangingSpan } from "../../../core/strand/hangingSpan.ts";

const span = { spanM: 45, riseM: -2, weightNPerM: 3, horizontalN: 1700 };

it("a span with the far support lower can hang", () => {
  expect(() => requireHangingSpan(span)).not.toThrow();
});

it.each([
  ["spanM", 0],
  ["riseM", Number.NaN],
  ["weightNPerM", -3],
  ["horizontalN", 0],
] as const)("a span whose %s is %s cannot hang", (name, value) => {
  expect(() => requireHangingSpan({ ...span, [name]: value })).toThrow(name);
});

it("a curve with a figure that is no number is not handed out", () => {
  const curve = { sagM: 1, lengthM: 45, lowPointM: 22, supportTensionN: 1700 };
  expect(requireFiniteCurve(curve)).toBe(curve);
  expect(() => requireFiniteCurve({ ...curve, supportTensionN: Number.POSITIVE_INFINITY })).toThrow("supportTensionN");
});

import { requireFinite } from "../units/guard.ts";
import { type HangingSpan, requireHangingSpan } from "./hangingSpan.ts";
import { requireInSpan } from "./pointLoad.ts";

/**
 * Sag at any station of a span by the catenary, supports at any two heights: how far the strand hangs below its chord there, vertical.
 *
 * @param atM horizontal distance from the near support, m, 0 to the span
 * @returns m, positive down, 0 at both supports
 * @throws RangeError when an argument is out of its range, or the span hangs so slack that its figures overflow
 * @source y = c cosh((x - a) / c) - c cosh(a / c), a = L/2 - c asinh(h / (2 c sinh(L / 2c))), as a product of two sines; checked by
 *   integration in tests/standards/inclinedCatenary.test.ts
 */
export function catenarySagAtM(span: HangingSpan, atM: number): number {
  requireHangingSpan(span);
  const { spanM, riseM, weightNPerM, horizontalN } = span;
  requireInSpan("atM", atM, spanM);
  const parameterM = horizontalN / weightNPerM;
  const lowPointM = spanM / 2 - parameterM * Math.asinh(riseM / (2 * parameterM * Math.sinh(spanM / (2 * parameterM))));
  const heightM =
    2 * parameterM * Math.sinh(atM / (2 * parameterM)) * Math.sinh((atM - 2 * lowPointM) / (2 * parameterM));
  return requireFinite("sagM", riseM * (atM / spanM) - heightM);
}

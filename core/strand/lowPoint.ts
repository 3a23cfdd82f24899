import { requireFinite } from "../units/guard.ts";
import { catenarySpan } from "./catenary.ts";
import type { HangingSpan } from "./hangingSpan.ts";
import { parabolicSpan } from "./parabola.ts";

/** Where a plain span, without point loads, turns from falling to rising. */
export type LowPoint = {
  /** horizontal distance from the lower support, m; negative where the curve would turn outside the span, beyond that support */
  readonly lowPointM: number;
  /** how far the strand in the span hangs below the lower support, m; 0 where it turns outside */
  readonly belowLowerM: number;
};

/**
 * Low point by the catenary.
 *
 * @throws RangeError when the span cannot hang
 * @source x0 = L/2 - c asinh(h / (2 c sinh(L / 2c))), and c (cosh(x0 / c) - 1) below the support
 */
export function catenaryLowPoint(span: HangingSpan): LowPoint {
  const { lowPointM } = catenarySpan(span);
  const parameterM = span.horizontalN / span.weightNPerM;
  const belowM = 2 * parameterM * Math.sinh(Math.max(0, lowPointM) / (2 * parameterM)) ** 2;
  return { lowPointM, belowLowerM: requireFinite("belowLowerM", belowM) };
}

/**
 * Low point by the parabola. With supports 1/15 of the span apart in height and a sag of 1 % it lies 0.08 % of the span further out
 * than by the catenary; at one height it is midspan by both.
 *
 * @throws RangeError when the span cannot hang
 * @source x0 = L/2 - H h / w L, and w x0^2 / 2H below the support
 */
export function parabolicLowPoint(span: HangingSpan): LowPoint {
  const { lowPointM } = parabolicSpan(span);
  const belowM = (span.weightNPerM * Math.max(0, lowPointM) ** 2) / (2 * span.horizontalN);
  return { lowPointM, belowLowerM: requireFinite("belowLowerM", belowM) };
}

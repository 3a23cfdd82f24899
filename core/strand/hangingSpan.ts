import { requireFinite, requirePositive } from "../units/guard.ts";

/** One span between two supports, hanging under its own load at a known horizontal tension. */
export type HangingSpan = {
  /** horizontal distance between the supports, m, > 0 */
  readonly spanM: number;
  /** height of the far support above the near one, m; negative where it is lower */
  readonly riseM: number;
  /** load per length, N/m, > 0 */
  readonly weightNPerM: number;
  /** horizontal component of the tension, N, > 0 */
  readonly horizontalN: number;
};

/** How the span hangs. */
export type SpanCurve = {
  /** vertical distance at midspan from the chord down to the strand, m, positive */
  readonly sagM: number;
  /** length along the strand, m */
  readonly lengthM: number;
  /** horizontal distance of the low point from the lower support, m; negative where the low point is outside the span on that side */
  readonly lowPointM: number;
  /** tension at the upper support, the largest in the span, N */
  readonly supportTensionN: number;
};

/**
 * Refuses a span that cannot hang.
 *
 * @throws RangeError when an argument is out of its range or not finite
 */
export function requireHangingSpan(span: HangingSpan): void {
  requirePositive("spanM", span.spanM);
  requireFinite("riseM", span.riseM);
  requirePositive("weightNPerM", span.weightNPerM);
  requirePositive("horizontalN", span.horizontalN);
}

/**
 * Passes a curve on if each of its figures is a number: sizes near the end of floating point overflow on the way.
 *
 * @throws RangeError when a figure is not finite
 */
export function requireFiniteCurve(curve: SpanCurve): SpanCurve {
  requireFinite("sagM", curve.sagM);
  requireFinite("lengthM", curve.lengthM);
  requireFinite("lowPointM", curve.lowPointM);
  requireFinite("supportTensionN", curve.supportTensionN);
  return curve;
}

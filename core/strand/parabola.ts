import { requireFinite, requirePositive } from "../units/guard.ts";
import { type HangingSpan, requireFiniteCurve, requireHangingSpan, type SpanCurve } from "./hangingSpan.ts";

/**
 * Midspan sag of a strand by the parabola, vertical, below the chord.
 *
 * Less than the catenary at the same tension: by 0.013 % when sag is 1 % of the span, 0.33 % at 5 %. Use it up to 2.7 %, where it is
 * 0.1 % short; beyond, the catenary.
 *
 * @param spanM       horizontal distance between supports, m, > 0
 * @param weightNPerM load per length of horizontal run, N/m, > 0
 * @param horizontalN horizontal component of tension, N, > 0
 * @returns m, positive down
 * @throws RangeError when an argument is not positive and finite
 * @source equilibrium of half a span, H D = w L^2 / 8; checked in tests/standards/sag.test.ts
 */
export function parabolicSagM(spanM: number, weightNPerM: number, horizontalN: number): number {
  requirePositive("spanM", spanM);
  requirePositive("weightNPerM", weightNPerM);
  requirePositive("horizontalN", horizontalN);
  return requireFinite("sagM", (weightNPerM * spanM * spanM) / (8 * horizontalN));
}

/**
 * How a span hangs, by the parabola: load even along the horizontal, length and tension by their series to second order.
 *
 * Good for a taut span with supports of nearly one height: at a sag of 1 % the length is short by 2e-8 of the span. The error
 * grows with the slope: with a rise of a tenth of the span, midspan sag is 0.5 % less than that of the catenary.
 *
 * @throws RangeError when the span cannot hang
 * @source level span H + w D and L + 8 D^2 / 3L; inclined span adds h^2 / 2L and moves the low point by H h / w L; textbook
 *   statics, checked in tests/standards/sag.test.ts
 */
export function parabolicSpan(span: HangingSpan): SpanCurve {
  requireHangingSpan(span);
  const { spanM, weightNPerM, horizontalN } = span;
  const riseM = Math.abs(span.riseM);
  const sagM = parabolicSagM(spanM, weightNPerM, horizontalN);
  const lowPointM = spanM / 2 - (horizontalN * riseM) / (weightNPerM * spanM);
  const upperAboveLowPointM = (weightNPerM * (spanM - lowPointM) ** 2) / (2 * horizontalN);
  return requireFiniteCurve({
    sagM,
    lengthM: spanM + (8 * sagM * sagM) / (3 * spanM) + (riseM * riseM) / (2 * spanM),
    lowPointM,
    supportTensionN: horizontalN + weightNPerM * upperAboveLowPointM,
  });
}

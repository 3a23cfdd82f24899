import { type HangingSpan, requireFiniteCurve, requireHangingSpan, type SpanCurve } from "./hangingSpan.ts";

/**
 * How a span hangs, by the catenary: load even along the strand itself, supports at any two heights.
 *
 * @throws RangeError when the span cannot hang, or hangs so slack that its figures overflow (span over some 1400 times H / w)
 * @source c = H / w; S^2 = h^2 + (2 c sinh(L / 2c))^2; low point L/2 - c asinh(h / (2 c sinh(L / 2c))); textbook statics, checked
 *   in tests/standards/sag.test.ts
 */
export function catenarySpan(span: HangingSpan): SpanCurve {
  requireHangingSpan(span);
  const { spanM, weightNPerM, horizontalN } = span;
  const riseM = Math.abs(span.riseM);
  const parameterM = horizontalN / weightNPerM;
  const half = spanM / (2 * parameterM);
  const levelLengthM = 2 * parameterM * Math.sinh(half);
  const slope = riseM / levelLengthM;
  // cosh(x) - 1 written as 2 sinh(x/2)^2 keeps its digits in a taut span, where cosh(x) is nearly 1
  const levelSagM = 2 * parameterM * Math.sinh(half / 2) ** 2;
  const lowPointM = spanM / 2 - parameterM * Math.asinh(slope);
  return requireFiniteCurve({
    sagM: levelSagM * Math.hypot(1, slope),
    lengthM: Math.hypot(riseM, levelLengthM),
    lowPointM,
    supportTensionN: horizontalN * Math.cosh((spanM - lowPointM) / parameterM),
  });
}

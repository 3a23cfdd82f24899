import { requireFinite } from "../units/guard.ts";
import { nearReactionN, wholeLoadN } from "./equivalentBeam.ts";
import { beamOf, type LoadedSpan } from "./loadedSpan.ts";

/** What a span does to its two supports. */
export type SupportPulls = {
  /** downward at the near support, N; negative where the strand lifts it */
  readonly nearDownN: number;
  readonly farDownN: number;
  /** tension along the strand at the near support, N */
  readonly nearTensionN: number;
  readonly farTensionN: number;
  /** how steeply the strand leaves the near support, rad, positive downward */
  readonly nearSlopeRad: number;
  readonly farSlopeRad: number;
};

/**
 * Pull of a loaded span on its supports. The larger of the two tensions is the largest in the span.
 *
 * Parabolic: at one horizontal tension the tension at the support is within 0.1 % of that of loadedCatenary for sags up to 3 % and
 * rises up to 0.4 of the span, within 0.3 % with point loads up to the weight of the line.
 *
 * @throws RangeError when an argument is out of its range
 * @source shear of the equivalent beam at its ends, less H h / L at the lower and more at the upper; checked in
 *   tests/standards/pointLoads.test.ts
 */
export function supportPulls(span: LoadedSpan): SupportPulls {
  const beam = beamOf(span);
  const { spanM, riseM, horizontalN } = span;
  const chordN = horizontalN * (riseM / spanM);
  const nearN = nearReactionN(beam);
  const nearDownN = requireFinite("nearDownN", nearN - chordN);
  const farDownN = requireFinite("farDownN", wholeLoadN(beam) - nearN + chordN);
  return {
    nearDownN,
    farDownN,
    nearTensionN: requireFinite("nearTensionN", Math.hypot(horizontalN, nearDownN)),
    farTensionN: requireFinite("farTensionN", Math.hypot(horizontalN, farDownN)),
    nearSlopeRad: Math.atan2(nearDownN, horizontalN),
    farSlopeRad: Math.atan2(farDownN, horizontalN),
  };
}

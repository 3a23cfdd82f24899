import { requireFinite, requireNotNegative, requirePositive } from "../units/guard.ts";
import { shearSquaredN2M } from "./equivalentBeam.ts";
import { type PointLoad, requirePointLoads } from "./pointLoad.ts";
import type { Settled } from "./settled.ts";
import { type NewState, solveStateCubic } from "./stateCubic.ts";

/** What hangs in a span and how warm it is. */
export type LoadState = {
  /** load per length of strand, N/m, > 0 */
  readonly weightNPerM: number;
  readonly temperatureDegC: number;
  /** what hangs at single places in this state; none where left out */
  readonly pointLoads?: readonly PointLoad[] | undefined;
};

/** A strand tied at both ends, strung in one state and asked about in another. */
export type ChangeOfState = {
  /** horizontal distance between supports, or the ruling span of a section, m, > 0 */
  readonly spanM: number;
  /** height of one support above the other, m; level where left out */
  readonly riseM?: number | undefined;
  /** metallic area times modulus of elasticity, N, > 0 */
  readonly axialStiffnessN: number;
  /** thermal expansion, 1/degC, 0 or more */
  readonly expansionPerDegC: number;
  readonly from: LoadState & { readonly horizontalN: number };
  readonly to: LoadState;
};

/**
 * Horizontal tension after the load, the temperature or both have changed.
 *
 * Parabolic, for a taut span: the load is even along the chord but for its point loads, the strand stretches elastically and with its
 * warmth, its supports stand still. Creep is not in it. The slack over the chord is taken to second order in the slope, so that the
 * new tension comes out mostly high against exactChangeOfState: in a level span of 150 ft by 0.01 % with 15 lb hung 36 in from the
 * pole, by 0.5 % with a worker of 200 lb there. Over spans of 10 to 120 m of 1/4 in strand, strung to 0.4 to 4 % of sag on rises up to
 * 0.2 of the span and changed by up to 40 degC and to 1 to 30 N/m, it is off by
 * - 0.6 % at most where the load is even;
 * - 2.5 % at most where point loads add up to the weight of the line in the span, 12 % where they add up to five times as much. For
 *   those use exactChangeOfState.
 *
 * The search starts a little above the root of a function that is convex and rising there, and walks down to it: at most 6 steps, 3.8 in the mean, over 5040 cases of a 1/4 in strand (spans of 3 to 150 m, sags of 0.2 to 5 %, loads of
 * 0.5 to 40 N/m, -40 to 60 degC, up to 900 N hung 36 in from the pole).
 *
 * @returns or a fault when the search did not settle
 * @throws RangeError when an argument is out of its range or not finite
 * @source H2^2 [H2 - H1 + k^5 M1 AE / 2 L H1^2 + k a (T2 - T1) AE] = k^5 M2 AE / 2 L with M the integral of the squared shear of
 *   the equivalent beam (w^2 L^3 / 12 without point loads) and k = span over chord; textbook statics, checked in
 *   tests/standards/changeOfState.test.ts and tests/standards/pointLoads.test.ts
 */
export function changeOfState(change: ChangeOfState): Settled<NewState> {
  requireChange(change);
  const { spanM, riseM = 0, axialStiffnessN, from, to } = change;
  // without hypot and fifth powers, which take longer than the search
  const cosSquared = 1 / (1 + (riseM / spanM) ** 2);
  const cosChord = Math.sqrt(cosSquared);
  const slackN3 = ({ weightNPerM, pointLoads = [] }: LoadState) =>
    (cosSquared ** 2 *
      cosChord *
      axialStiffnessN *
      shearSquaredN2M({ spanM, runNPerM: weightNPerM / cosChord, pointLoads })) /
    (2 * spanM);
  const warmthN = cosChord * change.expansionPerDegC * (to.temperatureDegC - from.temperatureDegC) * axialStiffnessN;
  return solveStateCubic(slackN3(from) / from.horizontalN ** 2 + warmthN - from.horizontalN, slackN3(to));
}

function requireChange({ spanM, riseM, axialStiffnessN, expansionPerDegC, from, to }: ChangeOfState): void {
  requirePositive("spanM", spanM);
  requireFinite("riseM", riseM ?? 0);
  requirePositive("axialStiffnessN", axialStiffnessN);
  requireNotNegative("expansionPerDegC", expansionPerDegC);
  requirePositive("from.horizontalN", from.horizontalN);
  requirePositive("from.weightNPerM", from.weightNPerM);
  requireFinite("from.temperatureDegC", from.temperatureDegC);
  requirePointLoads(from.pointLoads ?? [], spanM);
  requirePositive("to.weightNPerM", to.weightNPerM);
  requireFinite("to.temperatureDegC", to.temperatureDegC);
  requirePointLoads(to.pointLoads ?? [], spanM);
}

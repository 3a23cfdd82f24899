import { requireFinite, requireNotNegative, requirePositive } from "../units/guard.ts";
import { shearSquaredN2M } from "./equivalentBeam.ts";
import { beamOf } from "./loadedSpan.ts";
import type { PointLoad } from "./pointLoad.ts";
import type { Settled } from "./settled.ts";
import { type NewState, solveStateCubic } from "./stateCubic.ts";

/** What hangs in one span of a row in one state. */
type RowLoad = {
  /** load per length of strand, N/m, > 0 */
  readonly weightNPerM: number;
  readonly pointLoads?: readonly PointLoad[] | undefined;
};

/** One span of a row whose strand slips. */
export type RowSpan = {
  /** horizontal distance between supports, m, > 0 */
  readonly spanM: number;
  /** height of the far support above the near one, m */
  readonly riseM: number;
  readonly from: RowLoad;
  readonly to: RowLoad;
};

/** A row of spans between two dead ends whose strand slips at every pole between: strung in one state, asked about in another. */
export type SlippingSpans = {
  readonly spans: readonly RowSpan[];
  /** metallic area times modulus of elasticity, N, > 0 */
  readonly axialStiffnessN: number;
  /** thermal expansion, 1/degC, 0 or more */
  readonly expansionPerDegC: number;
  /** the one tension of the row as strung, N, > 0 */
  readonly horizontalN: number;
  readonly fromDegC: number;
  readonly toDegC: number;
};

/**
 * The one horizontal tension of a row of spans after load, temperature or both have changed, where the strand slips at the poles
 * without friction until all its spans pull alike. Level spans under one even load change as their ruling span does; slopes, point
 * loads and loads that differ from span to span are in it.
 *
 * Parabolic, with the error of changeOfState, which this is for a row of one span.
 *
 * @returns or a fault when the search did not settle
 * @throws RangeError when an argument is out of its range, or there is no span
 * @source what the strand is longer than the chords, k^3 M / 2 H^2 added up over the row, is what it stretched by, H L / k^2 AE, and
 *   grew by warmth, a T L / k (k = span over chord, M as in changeOfState); checked in tests/standards/rulingSpan.test.ts
 */
export function slippingSpans(row: SlippingSpans): Settled<NewState> {
  const { spans, axialStiffnessN, expansionPerDegC, horizontalN, fromDegC, toDegC } = row;
  requirePositive("axialStiffnessN", axialStiffnessN);
  requireNotNegative("expansionPerDegC", expansionPerDegC);
  requirePositive("horizontalN", horizontalN);
  requireFinite("fromDegC", fromDegC);
  requireFinite("toDegC", toDegC);
  const { fromN2, toN2, warmthFrac } = rowMeans(spans);
  const slackN3 = (shearN2: number) => (axialStiffnessN * shearN2) / 2;
  const warmthN = expansionPerDegC * (toDegC - fromDegC) * axialStiffnessN * warmthFrac;
  return solveStateCubic(slackN3(fromN2) / horizontalN ** 2 + warmthN - horizontalN, slackN3(toN2));
}

/** What the spans of a row come to together, each over the length that the row's tension stretches. */
export type RowMeans = {
  /** mean square of the shear as strung, N2: w^2 R^2 / 12 for level spans under one load, R being their ruling span */
  readonly fromN2: number;
  /** the same in the new state, N2 */
  readonly toN2: number;
  /** length that grows by warmth, as a part: 1 on level spans, less on a slope */
  readonly warmthFrac: number;
};

/**
 * Means of a row for the change of its one tension.
 *
 * @throws RangeError when a span is out of its range, or there is none
 */
export function rowMeans(spans: readonly RowSpan[]): RowMeans {
  if (spans.length === 0) throw new RangeError("spans must hold at least one span");
  let [stretchM, chordsM, fromN2M, toN2M] = [0, 0, 0, 0];
  for (const { spanM, riseM, from, to } of spans) {
    const shearN2M = (load: RowLoad) => shearSquaredN2M(beamOf({ spanM, riseM, horizontalN: 1, ...load }));
    const chordM = Math.hypot(spanM, riseM);
    const cosCubed = (spanM / chordM) ** 3;
    stretchM += chordM ** 2 / spanM;
    chordsM += chordM;
    fromN2M += cosCubed * shearN2M(from);
    toN2M += cosCubed * shearN2M(to);
  }
  return { fromN2: fromN2M / stretchM, toN2: toN2M / stretchM, warmthFrac: chordsM / stretchM };
}

/**
 * The one tension that strings a row to a sag: its ruling span, taken with the loads and slopes of the row, hangs to that part of
 * itself. A row of one span hangs to that part of its span.
 *
 * @param sagFrac midspan sag over span, > 0
 * @returns N
 * @throws RangeError when an argument is out of its range, or there is no span
 * @source H = w L / 8f with (w L)^2 = sum of w^2 L^3 over sum of L: ruling span and mean load in one
 */
export function rowStringingN(spans: readonly Pick<RowSpan, "spanM" | "riseM" | "from">[], sagFrac: number): number {
  requirePositive("sagFrac", sagFrac);
  if (spans.length === 0) throw new RangeError("spans must hold at least one span");
  let [cubes, sumM] = [0, 0];
  for (const { spanM, riseM, from } of spans) {
    const { runNPerM } = beamOf({ spanM, riseM, weightNPerM: from.weightNPerM, horizontalN: 1 });
    cubes += runNPerM ** 2 * spanM ** 3;
    sumM += spanM;
  }
  return requireFinite("horizontalN", Math.sqrt(cubes / sumM) / (8 * sagFrac));
}

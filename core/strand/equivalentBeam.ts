import type { PointLoad } from "./pointLoad.ts";

/**
 * The loads of a span laid on a simple beam between its supports. A strand hangs below its chord as the bending moment of that
 * beam over the horizontal tension, and its slope against the chord is the shear over that tension.
 *
 * @source general cable theorem, eng.libretexts.org, Aerospace Structures and Materials 6.2, seen; checked by integration in tests/standards/pointLoads.test.ts
 */
export type EquivalentBeam = {
  /** m, > 0 */
  readonly spanM: number;
  /** load per length of horizontal run, N/m */
  readonly runNPerM: number;
  readonly pointLoads: readonly PointLoad[];
};

/** Bending moment at a station, Nm, 0 at both supports. */
export function beamMomentNxM({ spanM, runNPerM, pointLoads }: EquivalentBeam, atM: number): number {
  const restM = spanM - atM;
  return pointLoads.reduce(
    (momentNxM, load) =>
      momentNxM + load.weightN * (load.atM <= atM ? load.atM * (restM / spanM) : (atM / spanM) * (spanM - load.atM)),
    (runNPerM * atM * restM) / 2,
  );
}

/** Reaction at the near support, N: what the strand pulls it down with when the span is level. */
export function nearReactionN({ spanM, runNPerM, pointLoads }: EquivalentBeam): number {
  return pointLoads.reduce(
    (reactionN, load) => reactionN + load.weightN * ((spanM - load.atM) / spanM),
    (runNPerM * spanM) / 2,
  );
}

/**
 * Integral of the squared shear over the span, N2 m. Over 2 H^2 it is how much longer the strand is than its chord.
 *
 * @source work of the loads on their own bending moment, integral V^2 = integral of q M; for one load w^2 L^3 / 12 + P w s (L - s) +
 *   P^2 s (L - s) / L
 */
export function shearSquaredN2M(beam: EquivalentBeam): number {
  const { spanM, runNPerM, pointLoads } = beam;
  return pointLoads.reduce(
    (sum, load) =>
      sum + load.weightN * (beamMomentNxM(beam, load.atM) + (runNPerM * load.atM * (spanM - load.atM)) / 2),
    (runNPerM * spanM) ** 2 * (spanM / 12),
  );
}

/** All that hangs on the beam, N. */
export function wholeLoadN({ spanM, runNPerM, pointLoads }: EquivalentBeam): number {
  return pointLoads.reduce((sum, { weightN }) => sum + weightN, runNPerM * spanM);
}

import type { Landmark, MatchRule, TraceMatch } from "./matchTrace.ts";

/** How sharply an instrument saw. */
export type TraceSharpness = {
  readonly pulseWidthNs: number;
  readonly groupIndex: number;
  /** From one point of the curve to the next, m. */
  readonly spacingM: number;
};

/** Where a fiber is broken, as fiber from its near end, and how far off that may be, m. */
export type BreakEstimate = {
  readonly fiberM: number;
  /** Two standard deviations, of all parts together. */
  readonly plusMinusM: number;
  /** One standard deviation each. */
  readonly parts: {
    /** Group index and excess of fiber over sheath: grows with the way from the last landmark found. */
    readonly scaleM: number;
    /** Coils and openings between the last landmark found and the break. */
    readonly slackM: number;
    readonly pulseM: number;
    readonly spacingM: number;
  };
  /** Landmark last found before the break. */
  readonly fromFiberM: number;
};

/** m/s, exact. */
const lightMPerS = 299_792_458;

/**
 * Where a fiber that ends too early is broken, counted on from the last landmark found before it.
 *
 * What the landmarks found say of the scale of distances is weighed against what may be expected of it, so that a wrong group index is
 * taken out as far as the trace shows it.
 *
 * @returns null where the fiber is not broken
 * @throws RangeError when a figure of the sharpness is not over 0
 * @source mean of two figures weighed by their variances; pulse length c t / 2n; parts add as squares, taken as independent [computed]
 */
export function breakPlace(
  { matches, broken, leadM }: Pick<TraceMatch<Landmark>, "matches" | "broken" | "leadM">,
  { slackM, scaleFrac }: Pick<MatchRule, "slackM" | "scaleFrac">,
  { pulseWidthNs, groupIndex, spacingM }: TraceSharpness,
): BreakEstimate | null {
  if (!(pulseWidthNs > 0) || !(groupIndex > 0) || !(spacingM > 0))
    throw new RangeError("pulseWidthNs, groupIndex and spacingM must be over 0");
  const last = matches.at(-1);
  if (!broken || !last) return null;
  const lastAtM = last.event?.atM ?? leadM;
  const shownM = lastAtM - leadM;
  const expectedWeight = 1 / scaleFrac ** 2;
  const shownWeight = (shownM / slackM) ** 2;
  const shownScale = shownM > 0 ? last.landmark.fiberM / shownM : 1;
  const scale = (expectedWeight + shownWeight * shownScale) / (expectedWeight + shownWeight);
  const onM = broken.atM - lastAtM;
  const parts = {
    scaleM: onM / Math.sqrt(expectedWeight + shownWeight),
    slackM,
    pulseM: (lightMPerS * pulseWidthNs * 1e-9) / (2 * groupIndex) / 2,
    spacingM: spacingM / 2,
  };
  return {
    fiberM: last.landmark.fiberM + scale * onM,
    plusMinusM: 2 * Math.hypot(...Object.values(parts)),
    parts,
    fromFiberM: last.landmark.fiberM,
  };
}

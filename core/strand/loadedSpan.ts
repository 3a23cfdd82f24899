import { requireFinite } from "../units/guard.ts";
import { beamMomentNxM, type EquivalentBeam } from "./equivalentBeam.ts";
import { type HangingSpan, requireHangingSpan } from "./hangingSpan.ts";
import { type PointLoad, requireInSpan, requirePointLoads } from "./pointLoad.ts";

/**
 * A span hanging in one case at a known horizontal tension, with what hangs at single places of it.
 *
 * In wind, give the vertical load with the tension of the whole load: how far the strand hangs out in the blown plane goes with the
 * resultant, and the vertical part of that with the vertical load.
 */
export type LoadedSpan = HangingSpan & { readonly pointLoads?: readonly PointLoad[] | undefined };

/**
 * Sag at any station of a span under any loads: how far the strand hangs below its chord there, vertical.
 *
 * Parabolic, load even along the chord. Less than the catenary of the same tension: by 0.013 % at a sag of 1 % of the span, 0.33 % at
 * 5 %, on slopes up to 0.4 too; with point loads up to the weight of the line by 0.8 % at most up to a sag of 3 %. Exact: loadedCatenary.
 *
 * @param atM horizontal distance from the near support, m, 0 to the span
 * @returns m, positive down, 0 at both supports
 * @throws RangeError when an argument is out of its range
 * @source bending moment of the equivalent beam over H; checked in tests/standards/pointLoads.test.ts
 */
export function loadedSagM(span: LoadedSpan, atM: number): number {
  const beam = beamOf(span);
  requireInSpan("atM", atM, span.spanM);
  return requireFinite("sagM", beamMomentNxM(beam, atM) / span.horizontalN);
}

/**
 * Height of the strand at any station above the near support, m; negative below it. Its error is that of loadedSagM.
 *
 * @throws RangeError when an argument is out of its range
 */
export function loadedHeightM(span: LoadedSpan, atM: number): number {
  const sagM = loadedSagM(span, atM);
  return requireFinite("heightM", span.riseM * (atM / span.spanM) - sagM);
}

/**
 * The equivalent beam of a span. Weight runs along the chord, which is longer than the span.
 *
 * @throws RangeError when the span cannot hang
 */
export function beamOf(span: LoadedSpan): EquivalentBeam {
  requireLoadedSpan(span);
  const { spanM, riseM, weightNPerM, pointLoads = [] } = span;
  return { spanM, runNPerM: weightNPerM * (Math.hypot(spanM, riseM) / spanM), pointLoads };
}

/**
 * Refuses a span that cannot hang, and loads that are not in it.
 *
 * @throws RangeError when an argument is out of its range or not finite
 */
export function requireLoadedSpan(span: LoadedSpan): void {
  requireHangingSpan(span);
  requirePointLoads(span.pointLoads ?? [], span.spanM);
}

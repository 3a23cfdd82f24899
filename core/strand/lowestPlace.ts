import { requireFinite } from "../units/guard.ts";
import { type EquivalentBeam, nearReactionN } from "./equivalentBeam.ts";
import { beamOf, type LoadedSpan, loadedHeightM } from "./loadedSpan.ts";

/** The lowest place of a strand within its span. */
export type LowestPlace = {
  /** horizontal distance from the near support, m */
  readonly atM: number;
  /** above the near support, m; 0 or negative */
  readonly heightM: number;
};

/**
 * Where a loaded span is lowest: at a point load, between two, or at the lower support. Its height has the error of loadedSagM.
 *
 * @throws RangeError when an argument is out of its range
 * @source the slope of the strand is h / L - V / H, and the shear V falls along the span
 */
export function lowestPlace(span: LoadedSpan): LowestPlace {
  const beam = beamOf(span);
  const atM = requireFinite("atM", stationOfShear(beam, span.horizontalN * (span.riseM / span.spanM)));
  return { atM, heightM: loadedHeightM(span, atM) };
}

/** Where the shear of the beam has fallen to a value; the support at that end where it never is. */
function stationOfShear(beam: EquivalentBeam, shearN: number): number {
  let restN = nearReactionN(beam) - shearN;
  let atM = 0;
  for (const load of [...beam.pointLoads].sort((a, b) => a.atM - b.atM)) {
    const runN = beam.runNPerM * (load.atM - atM);
    if (restN <= runN) break;
    restN -= runN + load.weightN;
    atM = load.atM;
    if (restN <= 0) return atM;
  }
  return Math.min(beam.spanM, atM + Math.max(0, restN) / beam.runNPerM);
}

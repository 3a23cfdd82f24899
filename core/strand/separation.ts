import { requireFinite } from "../units/guard.ts";
import { type LoadedSpan, loadedHeightM } from "./loadedSpan.ts";

/** A wire between two poles, hanging in the case it is asked about. */
export type Wire = LoadedSpan & {
  /** height of its near support above a level that both wires share, m */
  readonly nearHeightM: number;
};

/** How near two wires of one span come. */
export type Separation = {
  /** least height of the upper wire above the lower one, m; negative where they cross */
  readonly leastM: number;
  /** where that is, m from the near pole */
  readonly atM: number;
};

/** Height of one wire above another at a station, m; negative where it hangs below. */
export function separationAtM(upper: Wire, lower: Wire, atM: number): number {
  const upperM = upper.nearHeightM + loadedHeightM(upper, atM);
  return requireFinite("separationM", upperM - (lower.nearHeightM + loadedHeightM(lower, atM)));
}

/**
 * Least vertical separation of two wires over a span, each in its own case: for a check, the upper at its largest sag and the lower
 * without load at the same air temperature.
 *
 * Parabolic; each wire with the error of its sag. Blow-out sideways is not in it.
 *
 * @throws RangeError when a wire cannot hang, or the two spans differ in length
 * @source between any two supports or point loads the difference of two parabolas is a parabola, lowest at an end or at its vertex
 */
export function leastSeparation(upper: Wire, lower: Wire): Separation {
  if (upper.spanM !== lower.spanM) {
    throw new RangeError(`both wires must span the same length, not ${upper.spanM} m and ${lower.spanM} m`);
  }
  const stopsM = [upper, lower].flatMap(({ pointLoads = [] }) => pointLoads.map(({ atM }) => atM));
  const endsM = [...new Set([0, ...stopsM, upper.spanM])].sort((a, b) => a - b);
  const stationsM = endsM.flatMap((endM, piece) => [endM, ...vertex(upper, lower, endM, endsM[piece + 1] ?? endM)]);
  return stationsM
    .map((atM) => ({ leastM: separationAtM(upper, lower, atM), atM }))
    .reduce((least, one) => (one.leastM < least.leastM ? one : least));
}

/** Where the separation turns within a piece without point loads, found from its ends and middle; nowhere if it does not. */
function vertex(upper: Wire, lower: Wire, fromM: number, toM: number): number[] {
  const middleM = (fromM + toM) / 2;
  const fromGapM = separationAtM(upper, lower, fromM);
  const toGapM = separationAtM(upper, lower, toM);
  const bulgeM = fromGapM + toGapM - 2 * separationAtM(upper, lower, middleM);
  if (!(bulgeM > 0)) return [];
  const turnM = middleM - ((toM - fromM) * (toGapM - fromGapM)) / (4 * bulgeM);
  return turnM > fromM && turnM < toM ? [turnM] : [];
}

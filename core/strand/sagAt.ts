import { requireFinite } from "../units/guard.ts";
import { parabolicSagM } from "./parabola.ts";

/**
 * Sag at any station of a span by the parabola: how far the strand hangs below the chord there, vertical.
 * Short of the catenary as the sag at midspan is, see parabolicSagM.
 *
 * @param spanM       horizontal distance between supports, m, > 0
 * @param weightNPerM load per length, N/m, > 0
 * @param horizontalN horizontal component of tension, N, > 0
 * @param stationM    horizontal distance from either support, m, 0 to spanM
 * @returns m, positive down, 0 at both supports
 * @throws RangeError when an argument is out of its range
 * @source y = w x (L - x) / 2H; checked in tests/standards/sag.test.ts
 */
export function sagAtM(spanM: number, weightNPerM: number, horizontalN: number, stationM: number): number {
  const midspanM = parabolicSagM(spanM, weightNPerM, horizontalN);
  if (!(stationM >= 0 && stationM <= spanM)) {
    throw new RangeError(`stationM must lie in the span of ${spanM} m, not at ${stationM}`);
  }
  const stationFrac = stationM / spanM;
  return requireFinite("sagM", 4 * midspanM * stationFrac * (1 - stationFrac));
}

import { requireFinite, requireNotNegative } from "../units/guard.ts";

/** What the strand on both sides of a pole pulls it with, level. */
export type LinePull = {
  readonly pullN: number;
  /**
   * where to, rad, 0 to pi, measured from the way the line came on and towards the side it turns to; a guy that takes the pull goes the
   * opposite way
   */
  readonly directionRad: number;
};

/**
 * Pull of a line on a pole where it turns, where its tension differs from one side to the other, or where it ends.
 *
 * @param behindN       horizontal tension of the span it comes from, N, 0 or more; 0 at the first pole of a line
 * @param aheadN        horizontal tension of the span it goes on to, N, 0 or more; 0 at a dead end
 * @param deflectionRad how far the line turns, 0 straight on, pi back
 * @throws RangeError when an argument is out of its range
 * @source sum of two forces, 2 T sin(A / 2) where both are alike; checked in tests/standards/guy.test.ts
 */
export function linePull(behindN: number, aheadN: number, deflectionRad: number): LinePull {
  requireNotNegative("behindN", behindN);
  requireNotNegative("aheadN", aheadN);
  if (!(deflectionRad >= 0 && deflectionRad <= Math.PI)) {
    throw new RangeError(`deflectionRad must lie between 0 and pi, not ${deflectionRad}`);
  }
  // cos(A) as 1 - 2 sin(A/2)^2, so that like tensions on a nearly straight line keep the digits of their pull
  const forwardN = aheadN - behindN - 2 * aheadN * Math.sin(deflectionRad / 2) ** 2;
  const sidewaysN = aheadN * Math.sin(deflectionRad);
  return {
    pullN: requireFinite("pullN", Math.hypot(forwardN, sidewaysN)),
    directionRad: Math.atan2(sidewaysN, forwardN),
  };
}

import { requireNotNegative } from "../units/guard.ts";

/** A weight that hangs at one place of a span: terminal, coil of slack, worker. */
export type PointLoad = {
  /** horizontal distance from the near support, m, 0 to the span */
  readonly atM: number;
  /** N, 0 or more */
  readonly weightN: number;
};

/**
 * Refuses loads that do not hang in the span.
 *
 * @throws RangeError when a load is negative, not finite or outside the span
 */
export function requirePointLoads(pointLoads: readonly PointLoad[], spanM: number): void {
  for (const { atM, weightN } of pointLoads) {
    requireInSpan("a point load", atM, spanM);
    requireNotNegative("weightN of a point load", weightN);
  }
}

/**
 * Refuses a station outside the span.
 *
 * @throws RangeError, also for NaN
 */
export function requireInSpan(name: string, atM: number, spanM: number): void {
  if (!(atM >= 0 && atM <= spanM)) throw new RangeError(`${name} must lie in the span of ${spanM} m, not at ${atM}`);
}

import { requireFinite, requireNotNegative, requirePositive } from "../units/guard.ts";

/**
 * Tension as part of the rated breaking strength.
 *
 * @param tensionN  the largest in the span, at its upper support, N, 0 or more
 * @param breakingN rated breaking strength of the strand, N, > 0
 * @returns 0 unloaded, 1 at the rated strength
 * @throws RangeError when an argument is out of its range
 */
export function breakingFrac(tensionN: number, breakingN: number): number {
  requireNotNegative("tensionN", tensionN);
  requirePositive("breakingN", breakingN);
  return requireFinite("breakingFrac", tensionN / breakingN);
}

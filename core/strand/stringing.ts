import { requireFinite, requirePositive } from "../units/guard.ts";

/**
 * Horizontal tension that gives a strand a wanted sag, by the parabola: less than by the catenary, by 0.013 % for a sag of 1 % of the
 * span, 0.33 % for 5 %.
 *
 * @param spanM       horizontal distance between supports, m, > 0
 * @param weightNPerM load per length while the sag is measured, N/m, > 0
 * @param sagFrac     midspan sag over span, > 0; 0.01 is a usual finished sag
 * @returns N
 * @throws RangeError when an argument is not positive and finite
 * @source H = w L^2 / 8D with D = sagFrac L; checked in tests/standards/sag.test.ts
 */
export function stringingHorizontalN(spanM: number, weightNPerM: number, sagFrac: number): number {
  requirePositive("spanM", spanM);
  requirePositive("weightNPerM", weightNPerM);
  requirePositive("sagFrac", sagFrac);
  return requireFinite("horizontalN", (weightNPerM * spanM) / (8 * sagFrac));
}

import { requireFinite, requirePositive } from "../units/guard.ts";

/**
 * The one span that changes its tension as a whole row of level spans does, where the strand can slip at the poles between its dead
 * ends. Between the mean and the longest span. A pole that clamps the strand ends the row: see clampedSpans.
 *
 * Exact for the parabola on even loads; with terminals or coils in the row it is not.
 *
 * @param spansM horizontal lengths between the dead ends, m, each > 0, at least one
 * @returns m
 * @throws RangeError when there is no span, or one is not positive and finite
 * @source sqrt(sum L^3 / sum L): one tension, slack added up over the row; checked in tests/standards/rulingSpan.test.ts
 */
export function rulingSpanM(spansM: readonly number[]): number {
  if (spansM.length === 0) throw new RangeError("spansM must hold at least one span");
  const longestM = Math.max(...spansM);
  let cubes = 0;
  let sum = 0;
  for (const spanM of spansM) {
    requirePositive("a span of spansM", spanM);
    // as parts of the longest span, so that no cube overflows
    cubes += (spanM / longestM) ** 3;
    sum += spanM / longestM;
  }
  return requireFinite("rulingSpanM", longestM * Math.sqrt(cubes / sum));
}

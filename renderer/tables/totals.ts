/** What a range of figures comes to. */
export type Totals = {
  readonly count: number;
  readonly sum: number;
  readonly least: number;
  readonly most: number;
  readonly mean: number;
};

/** Totals of figures; null where there are none. */
export function totalsOf(figures: readonly number[]): Totals | null {
  if (figures.length === 0) return null;
  let [sum, least, most] = [0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const one of figures) {
    sum += one;
    least = Math.min(least, one);
    most = Math.max(most, one);
  }
  return { count: figures.length, sum, least, most, mean: sum / figures.length };
}

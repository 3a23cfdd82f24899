/** Points of a PDF page in a millimetre. */
export const pointsPerMm = 72 / 25.4;

/** A length on paper in whole hundredths of a point, which is how fine a page is drawn. */
export function hundredths(mm: number): number {
  return Math.round(mm * pointsPerMm * 100);
}

/** A length on paper in points, as a page says it. */
export function points(mm: number): string {
  return String(hundredths(mm) / 100);
}

/** A number to two decimals. */
export function rounded(value: number): string {
  return String(Math.round(value * 100) / 100);
}

import { expect } from "vitest";

/** Where a published or computed figure comes from, and how near the program must come to it. */
export type Source = {
  readonly document: string;
  readonly edition: string;
  /** seen: read in a public copy; memory: believed to be in the document; computed: worked out from a formula, never a citation */
  readonly mark: "seen" | "memory" | "computed";
  readonly tolerance: string;
};

/** The heading of a group of examples. */
export function sourceTitle({ document, edition, mark, tolerance }: Source): string {
  return `${document}, ${edition} [${mark}], to ${tolerance}`;
}

/**
 * Expects a figure to agree with what was printed.
 *
 * @param printed the digits as they stand in the source
 * @param unitCount how many units of the last printed digit it may be off; half of one for a rounded figure
 */
export function expectPrinted(value: number, printed: string, unitCount = 0.5): void {
  const decimalCount = printed.includes(".") ? printed.length - printed.indexOf(".") - 1 : 0;
  const offBy = Math.abs(value - Number(printed));
  expect(offBy, `${value} against the printed ${printed}`).toBeLessThanOrEqual(unitCount * 10 ** -decimalCount);
}

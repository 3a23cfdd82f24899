/**
 * Text that a spreadsheet would run as a formula; the CSV writer puts an apostrophe before it. Apostrophes that already stand
 * there count too, so that taking one away always gives back what was written.
 */
export const guardedText = /^'*[=+\-@\t\r]/;

/** A cell without the apostrophe that guards it. */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") && guardedText.test(cell) ? cell.slice(1) : cell;
}

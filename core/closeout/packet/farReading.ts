/**
 * Whether a reading is so far from what is drawn that the page asks again.
 *
 * @param tolerance  in the unit of the figures; null never asks
 */
export function isFar(
  value: number | null,
  drawn: { readonly leastValue: number; readonly mostValue: number } | null,
  tolerance: number | null,
): boolean {
  if (value === null || drawn === null || tolerance === null) return false;
  const room = tolerance + 1e-9;
  return value < drawn.leastValue - room || value > drawn.mostValue + room;
}

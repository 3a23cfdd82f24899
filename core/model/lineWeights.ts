/**
 * Weights a company may give the heaviest of its lines by their meaning, mm: the usual one in the middle, a step of the series lighter
 * or heavier at its sides. Finer lines of the same meaning go along, so that symbols stay open and keep their order.
 *
 * @source series 0.13 to 0.7 mm: ISO 128-20:1996, 4.2, from memory
 */
export const lineWeightsMm = {
  newLineMm: ["0.35", "0.5", "0.7"],
  existingLineMm: ["0.25", "0.35", "0.5"],
  dimensionLineMm: ["0.13", "0.18", "0.25"],
  markLineMm: ["0.25", "0.35", "0.5"],
  frameLineMm: ["0.35", "0.5", "0.7"],
} as const;
export type LineMeaning = keyof typeof lineWeightsMm;

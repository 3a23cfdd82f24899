import { metresPerFoot } from "../units/constants.ts";

/** A pole's size as the trade writes it: length in feet, then class. */
export type PoleSize = { readonly lengthM: number; readonly poleClass: string };

const size = /^(\d{2,3}) ?(?:'|ft\.?|feet)? ?[-/, ] ?(?:cl(?:ass)?\.? ?)?(h[1-6]|10|[1-9])$/i;

/**
 * Reads `45-4`, `45/4`, `45' class 4`, `45 ft H1` as length and class; anything else is null.
 *
 * @source ANSI O5.1 names a pole by length in feet and class H6 to H1, then 1 to 7, 9 and 10; from memory
 */
export function parsePoleSize(text: string): PoleSize | null {
  const match = size.exec(text.trim());
  const lengthFt = Number(match?.[1]);
  const poleClass = match?.[2]?.toUpperCase();
  if (poleClass === undefined || lengthFt < 20 || lengthFt > 130) return null;
  return { lengthM: Math.round(lengthFt * metresPerFoot * 10_000) / 10_000, poleClass };
}

/**
 * What stands above ground of a pole of a given length, m, rounded to 0.1 mm: a tenth of the length and 2 ft are set in the soil.
 *
 * @param lengthM length of the pole as bought, m, > 0
 * @returns null where nothing would stand out
 * @source setting depth in soil by common practice
 */
export function aboveGroundOfLengthM(lengthM: number): number | null {
  if (!(lengthM > 0)) throw new RangeError(`a pole's length must be more than 0, not ${lengthM}`);
  const aboveM = Math.round((lengthM * 0.9 - 2 * metresPerFoot) * 10_000) / 10_000;
  return aboveM > 0 ? aboveM : null;
}

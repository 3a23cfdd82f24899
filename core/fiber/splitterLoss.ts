import { requireNotNegative } from "../units/guard.ts";

/**
 * Loss of an ideal splitter into equal legs: the light divided, nothing lost.
 *
 * @param legCount legs, whole, 1 or more
 * @returns dB to each leg
 * @throws RangeError when legCount is not such a number
 * @source 10 log10 N
 */
export function idealSplitLossDb(legCount: number): number {
  requireLegs(legCount);
  return 10 * Math.log10(legCount);
}

/**
 * Largest loss a uniform 1 x N splitter may have, without connectors. For planning where the maker's figure is not known.
 *
 * @param legCount legs, whole, 2 or more
 * @returns dB to each leg
 * @throws RangeError when legCount is not such a number
 * @source GR-1209 style limit 0.8 + 3.4 log2 N, from memory
 */
export function splitLossLimitDb(legCount: number): number {
  requireLegs(legCount);
  if (legCount < 2) throw new RangeError("legCount must be 2 or more: one leg splits nothing");
  return 0.8 + 3.4 * Math.log2(legCount);
}

/**
 * Loss to one leg of an unequal tap.
 *
 * @param legFrac  share of the light that leg gets, over 0 to 1
 * @param excessDb what the tap itself loses, dB, 0 or more; 0.2 to 0.5 is common
 * @returns dB
 * @throws RangeError when an argument is out of its range
 * @source -10 log10(fraction) + excess
 */
export function tapLossDb(legFrac: number, excessDb: number): number {
  if (!(legFrac > 0 && legFrac <= 1)) throw new RangeError(`legFrac must lie over 0 and up to 1, not ${legFrac}`);
  requireNotNegative("excessDb", excessDb);
  return excessDb - 10 * Math.log10(legFrac);
}

function requireLegs(legCount: number): void {
  if (!(Number.isInteger(legCount) && legCount >= 1)) {
    throw new RangeError(`legCount must be a whole number of legs, not ${legCount}`);
  }
}

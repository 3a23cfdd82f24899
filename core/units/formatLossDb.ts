import { fixedText } from "./fixedText.ts";

/**
 * Prints an optical loss or a margin: `21.74 dB`. The decibel is the same in both systems of units.
 *
 * @throws RangeError when lossDb is not finite
 */
export function formatLossDb(lossDb: number): string {
  return `${fixedText(lossDb, 2)} dB`;
}

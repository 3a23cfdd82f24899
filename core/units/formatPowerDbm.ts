import { fixedText } from "./fixedText.ts";

/**
 * Prints an optical power: `-20.24 dBm`.
 *
 * @throws RangeError when powerDbm is not finite
 */
export function formatPowerDbm(powerDbm: number): string {
  return `${fixedText(powerDbm, 2)} dBm`;
}

import { pascalsPerPsf } from "./constants.ts";
import { fixedText } from "./fixedText.ts";
import type { UnitSystem } from "./unitSystem.ts";

/**
 * Prints a pressure of wind: `4.00 psf` or `192 Pa`.
 *
 * @throws RangeError when pressurePa is not finite
 */
export function formatPressure(pressurePa: number, system: UnitSystem): string {
  return system === "us" ? `${fixedText(pressurePa / pascalsPerPsf, 2)} psf` : `${fixedText(pressurePa, 0)} Pa`;
}

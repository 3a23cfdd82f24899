import { metresPerSecondPerMph } from "./constants.ts";
import { fixedText } from "./fixedText.ts";
import type { UnitSystem } from "./unitSystem.ts";

/**
 * Prints the speed of a gust: `90 mph` or `40.2 m/s`.
 *
 * @throws RangeError when speedMPerS is not finite
 */
export function formatSpeed(speedMPerS: number, system: UnitSystem): string {
  return system === "us"
    ? `${fixedText(speedMPerS / metresPerSecondPerMph, 0)} mph`
    : `${fixedText(speedMPerS, 1)} m/s`;
}

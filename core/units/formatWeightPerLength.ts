import { nPerMPerPoundPerFoot } from "./constants.ts";
import { fixedText } from "./fixedText.ts";
import type { UnitSystem } from "./unitSystem.ts";

/**
 * Prints a load per length of strand: `0.202 lb/ft` or `2.95 N/m`.
 *
 * @throws RangeError when weightNPerM is not finite
 */
export function formatWeightPerLength(weightNPerM: number, system: UnitSystem): string {
  return system === "us"
    ? `${fixedText(weightNPerM / nPerMPerPoundPerFoot, 3)} lb/ft`
    : `${fixedText(weightNPerM, 2)} N/m`;
}

import { fixedText } from "./fixedText.ts";
import { degFFromDegC } from "./temperature.ts";
import type { UnitSystem } from "./unitSystem.ts";

/**
 * Prints a temperature to the degree: `60 °F` or `16 °C`.
 *
 * @throws RangeError when temperatureDegC is not finite
 */
export function formatTemperature(temperatureDegC: number, system: UnitSystem): string {
  return system === "us" ? `${fixedText(degFFromDegC(temperatureDegC), 0)} °F` : `${fixedText(temperatureDegC, 0)} °C`;
}

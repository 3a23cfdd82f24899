import { metresPerFoot, metresPerInch } from "./constants.ts";
import { fixedText } from "./fixedText.ts";
import type { UnitSystem } from "./unitSystem.ts";

/**
 * How the trade prints each kind of length:
 * - span, drop: `148 ft`, `45.1 m`
 * - height: `18 ft 6 in`, `5.64 m`, to the nearest
 * - clearance: like height, but rounded down, so that no measured clearance reads better than it is
 * - offset: `36 in`, `0.91 m`
 * - sag: `14.9 in`, `0.378 m`
 * - thickness, of ice or a cable: `0.50 in`, `12.7 mm`
 */
export type LengthStyle = "span" | "drop" | "height" | "clearance" | "offset" | "sag" | "thickness";

/**
 * Prints a length in the reader's units and the style of the trade.
 *
 * A clearance within a millionth of a printed digit below the next one counts as that one: 18 ft 6 in typed is 18 ft 6 in printed.
 *
 * @param valueM length, m; negative prints with a leading minus
 * @throws RangeError when valueM is not finite
 */
export function formatLength(valueM: number, system: UnitSystem, style: LengthStyle): string {
  return system === "us" ? usText(valueM, style) : metricText(valueM, style);
}

function usText(valueM: number, style: LengthStyle): string {
  switch (style) {
    case "span":
    case "drop":
      return `${fixedText(valueM / metresPerFoot, 0)} ft`;
    case "offset":
      return `${fixedText(valueM / metresPerInch, 0)} in`;
    case "sag":
      return `${fixedText(valueM / metresPerInch, 1)} in`;
    case "thickness":
      return `${fixedText(valueM / metresPerInch, 2)} in`;
    case "height":
      return feetAndInches(Math.round(valueM / metresPerInch));
    case "clearance":
      return feetAndInches(downToWhole(valueM / metresPerInch));
  }
}

function metricText(valueM: number, style: LengthStyle): string {
  switch (style) {
    case "span":
    case "drop":
      return `${fixedText(valueM, 1)} m`;
    case "height":
    case "offset":
      return `${fixedText(valueM, 2)} m`;
    case "sag":
      return `${fixedText(valueM, 3)} m`;
    case "thickness":
      return `${fixedText(valueM * 1000, 1)} mm`;
    case "clearance":
      return `${fixedText(downToWhole(valueM * 100) / 100, 2)} m`;
  }
}

function feetAndInches(inchCount: number): string {
  const sign = inchCount < 0 ? "-" : "";
  const feet = Math.floor(Math.abs(inchCount) / 12);
  const inches = fixedText(Math.abs(inchCount) % 12, 0);
  return feet === 0 ? `${sign}${inches} in` : `${sign}${feet} ft ${inches} in`;
}

function downToWhole(count: number): number {
  return Math.floor(count + 1e-6);
}

import { metresPerFoot } from "./constants.ts";
import { fixedText } from "./fixedText.ts";
import type { UnitSystem } from "./unitSystem.ts";

/**
 * Prints a distance along a line as a station: whole hundreds of feet, or whole kilometres, before the plus and the rest behind.
 *
 * @param stationM  distance from the beginning of the line, m, not negative
 * @throws RangeError when stationM is negative or not finite
 */
export function formatStation(stationM: number, system: UnitSystem): string {
  if (!(stationM >= 0 && Number.isFinite(stationM)))
    throw new RangeError(`a station is a distance from the beginning of a line, not ${stationM}`);
  const [unitM, digits] = partsOf(system);
  const whole = Math.round(stationM / unitM);
  const perStation = 10 ** digits;
  return `${fixedText(Math.floor(whole / perStation), 0)}+${String(whole % perStation).padStart(digits, "0")}`;
}

/**
 * Reads a station as it is printed, `12+34`, decimals allowed behind the plus.
 *
 * @returns distance from the beginning of the line, m; null where the text is no station
 */
export function parseStationM(text: string, system: UnitSystem): number | null {
  const match = /^(\d+)\s*\+\s*(\d+(?:\.\d+)?)$/.exec(text.trim());
  if (!match) return null;
  const [unitM, digits] = partsOf(system);
  return (Number(match[1]) * 10 ** digits + Number(match[2])) * unitM;
}

/** Length of the smallest printed unit, m, and digits behind the plus. */
function partsOf(system: UnitSystem): readonly [unitM: number, digits: number] {
  return system === "us" ? [metresPerFoot, 2] : [1, 3];
}

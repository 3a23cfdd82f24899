import { metresPerFoot } from "../../units/constants.ts";
import { fixedText } from "../../units/fixedText.ts";
import type { UnitSystem } from "../../units/unitSystem.ts";

/** Unit of long lengths, for a table's heading. */
export function lengthUnit(system: UnitSystem): string {
  return system === "us" ? "ft" : "m";
}

/** Unit of forces, for a table's heading. */
export function forceUnit(system: UnitSystem): string {
  return system === "us" ? "lbf" : "kN";
}

/** Unit of sags, for a table's heading. */
export function sagUnit(system: UnitSystem): string {
  return system === "us" ? "in" : "mm";
}

/** A whole number with its thousands apart. */
export function grouped(count: number): string {
  return fixedText(count, 0).replace(/\B(?=(\d{3})+$)/g, ",");
}

/** Distance along a route as surveyors write it: 12+34 in feet by hundreds, 1+234 in metres by thousands. */
export function stationText(alongM: number, system: UnitSystem): string {
  const whole = Math.round(system === "us" ? alongM / metresPerFoot : alongM);
  const digitCount = system === "us" ? 2 : 3;
  const base = 10 ** digitCount;
  return `${Math.floor(whole / base)}+${String(whole % base).padStart(digitCount, "0")}`;
}

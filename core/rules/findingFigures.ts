import { degFromRad } from "../units/angle.ts";
import { fixedText } from "../units/fixedText.ts";
import { formatForce } from "../units/formatForce.ts";
import { formatLength } from "../units/formatLength.ts";
import { formatLossDb } from "../units/formatLossDb.ts";
import { formatPowerDbm } from "../units/formatPowerDbm.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Finding } from "./finding.ts";
import { isUnverified } from "./rule.ts";

/**
 * The figures of a finding as people read them: what was measured and the limit it was held against, said
 * to be unverified where nobody has read it in its document.
 *
 * @returns none where the rule compared no figures, else two short phrases
 */
export function findingFigures(
  finding: Pick<Finding, "measured" | "limit" | "unit" | "basis">,
  system: UnitSystem,
): string[] {
  const { measured, limit, unit, basis } = finding;
  const words = (value: number): string => figureText(value, unit, system);
  return [
    ...(measured === null ? [] : [`measured ${words(measured)}`]),
    ...(limit === null ? [] : [`limit ${words(limit)}${isUnverified(basis) ? " (unverified)" : ""}`]),
  ];
}

/** A finding's figure in the reader's units; a length rounded down, as a clearance is. */
export function figureText(value: number, unit: string, system: UnitSystem): string {
  switch (unit) {
    case "m":
      return formatLength(value, system, Math.abs(value) < 30 ? "clearance" : "span");
    case "N":
      return formatForce(value, system);
    case "rad":
      return `${fixedText(degFromRad(value), 0)}°`;
    case "dB":
      return formatLossDb(value);
    case "dBm":
      return formatPowerDbm(value);
    case "dB/km":
      return `${fixedText(value, 3)} dB/km`;
    case "":
      return Number.isInteger(value) ? String(value) : fixedText(value, 2);
    default:
      return `${Number.isInteger(value) ? value : fixedText(value, 2)} ${unit}`;
  }
}

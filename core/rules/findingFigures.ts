import { formatForce } from "../units/formatForce.ts";
import { formatLength } from "../units/formatLength.ts";
import { formatLossDb } from "../units/formatLossDb.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Finding } from "./finding.ts";

/**
 * The figures of a finding as people read them: what was measured and the limit it was held against.
 *
 * @returns none where the rule compared no figures, else two short phrases
 */
export function findingFigures(finding: Pick<Finding, "measured" | "limit" | "unit">, system: UnitSystem): string[] {
  const { measured, limit, unit } = finding;
  const words = (value: number): string => figureText(value, unit, system);
  return [
    ...(measured === null ? [] : [`measured ${words(measured)}`]),
    ...(limit === null ? [] : [`limit ${words(limit)}`]),
  ];
}

function figureText(value: number, unit: string, system: UnitSystem): string {
  switch (unit) {
    case "m":
      return formatLength(value, system, Math.abs(value) < 30 ? "clearance" : "span");
    case "N":
      return formatForce(value, system);
    case "dB":
      return formatLossDb(value);
    case "":
      return Number.isInteger(value) ? String(value) : value.toFixed(2);
    default:
      return `${value} ${unit}`;
  }
}

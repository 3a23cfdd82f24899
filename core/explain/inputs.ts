import type { TableName } from "../model/tables.ts";
import { metresPerFoot, newtonsPerPoundForce } from "../units/constants.ts";
import { formatLength, type LengthStyle } from "../units/formatLength.ts";
import { formatLossDb } from "../units/formatLossDb.ts";
import { significantText } from "../units/significantText.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { ExplainedInput } from "./explanation.ts";

/** Where an input is read from, as `pole P-12`. */
type From = readonly [table: TableName, id: string] | null;

/** A tape and a scale give no more digits. */
const digitCount = 4;

/** Units of the kernels that only explanations print, as US readers know them. */
const usUnits = {
  N·m: { perUnit: newtonsPerPoundForce * metresPerFoot, name: "lbf·ft" },
  "N²": { perUnit: newtonsPerPoundForce ** 2, name: "lbf²" },
  "/°C": { perUnit: 1.8, name: "/°F" },
} as const;

function input(
  [symbol, name]: readonly [symbol: string, name: string],
  [value, unit]: readonly [value: number, unit: string],
  text: string,
  from: From,
): ExplainedInput {
  return { symbol, name, value, unit, text, from: from && { table: from[0], id: from[1] } };
}

/** A length that goes into a formula, m. */
export function lengthInput(
  name: readonly [symbol: string, name: string],
  valueM: number,
  [system, style]: readonly [UnitSystem, LengthStyle],
  from: From,
): ExplainedInput {
  return input(name, [valueM, "m"], formatLength(valueM, system, style), from);
}

/** A loss that goes into a formula, dB. */
export function lossInput(name: readonly [symbol: string, name: string], valueDb: number, from: From): ExplainedInput {
  return input(name, [valueDb, "dB"], formatLossDb(valueDb), from);
}

/** A number that reads the same in every system of units. */
export function plainInput(
  name: readonly [symbol: string, name: string],
  value: number,
  unit: string,
  from: From,
): ExplainedInput {
  const text = Number.isInteger(value) ? String(value) : significantText(value, digitCount);
  return input(name, [value, unit], unit === "" ? text : `${text} ${unit}`, from);
}

/** A quantity that only explanations print: a moment, a squared force, a growth by warmth. */
export function derivedInput(
  name: readonly [symbol: string, name: string],
  [value, unit]: readonly [value: number, unit: keyof typeof usUnits],
  system: UnitSystem,
  from: From,
): ExplainedInput {
  const printed = system === "us" ? usUnits[unit] : { perUnit: 1, name: unit };
  return input(name, [value, unit], `${significantText(value / printed.perUnit, digitCount)} ${printed.name}`, from);
}

/** A quantity whose text its own formatter has made. */
export function saidInput(
  name: readonly [symbol: string, name: string],
  quantity: readonly [value: number, unit: string],
  text: string,
  from: From,
): ExplainedInput {
  return input(name, quantity, text, from);
}

import type { StrengthCase } from "../model/loadRows.ts";
import type { TableName } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";
import { type HungState, type SpanSag, spanSag } from "../plant/spanSag.ts";
import { formatForce } from "../units/formatForce.ts";
import { formatTemperature } from "../units/formatTemperature.ts";
import { formatWeightPerLength } from "../units/formatWeightPerLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { ExplainedInput } from "./explanation.ts";
import { derivedInput, lengthInput, plainInput, saidInput } from "./inputs.ts";
import { weatherRow } from "./weatherRow.ts";

/** How a tension comes about: the formula in words and symbols, and what goes in. */
export type TensionFormula = {
  readonly words: string;
  readonly formula: string;
  readonly inputs: readonly ExplainedInput[];
};

export const stateWords =
  "The strand stretches by the tension and grows by the warmth between the stringing state and this one. H is the one tension at which both lengths fit";

/** A case the strand comes to by change of state, and how the span hangs in it. */
export type CaseHung = { readonly part: Exclude<StrengthCase, "stringing">; readonly hung: HungState };

type From = readonly [table: TableName, id: string] | null;

/** What the formulas of a span's tension are filled from; null where the span has none. */
export function tensionFacts(plant: Plant, spanId: string, units: UnitSystem) {
  const sag = spanSag(plant, spanId);
  const { strandSectionId } = plant.rowOf("span", spanId);
  if (sag.kind === "unknown" || strandSectionId === null) return null;
  const section = plant.rowOf("strandSection", strandSectionId);
  const ofSection = ["strandSection", section.id] as const;
  return {
    sag,
    section,
    ofSection,
    units,
    stringingSag: plainInput(["f", "stringing sag over span"], section.stringingSagFrac, "", ofSection),
    span: lengthInput(["L", "span length"], sag.lengthM, [units, "span"], ["span", spanId]),
    slope: lengthInput(
      ["c", "distance between the supports along the slope"],
      Math.hypot(sag.lengthM, sag.riseM),
      [units, "height"],
      ["span", spanId],
    ),
    weight: (symbol: string, name: string, loadNPerM: number) =>
      saidInput([symbol, name], [loadNPerM, "N/m"], formatWeightPerLength(loadNPerM, units), null),
    /** What the change of state takes from strand and weather, of a span or of a row. */
    state: (part: CaseHung["part"], hung: HungState) => stateInputs(plant, sag, section, [{ part, hung }, units]),
  };
}

type Known = Extract<SpanSag, { kind: "known" }>;

function stateInputs(
  plant: Plant,
  sag: Known,
  section: { readonly id: string; readonly strandTypeId: string; readonly stringingDegC: number },
  [{ part, hung }, units]: readonly [CaseHung, UnitSystem],
): readonly ExplainedInput[] {
  const strand = plant.rowOf("strandType", section.strandTypeId);
  const force = (symbol: string, name: string, valueN: number, from: From) =>
    saidInput([symbol, name], [valueN, "N"], formatForce(valueN, units), from);
  const temperature = (symbol: string, name: string, degC: number, from: From) =>
    saidInput([symbol, name], [degC, "°C"], formatTemperature(degC, units), from);
  const ofSection = ["strandSection", section.id] as const;
  const ofWeather = part === "worker" ? ofSection : weatherRow(plant, part, section.id);
  return [
    force("K", "metal area times modulus", strand.areaM2 * strand.modulusPa, ["strandType", strand.id]),
    force("H", "horizontal tension found", hung.horizontalN, null),
    force("H0", "horizontal tension at stringing", sag.stringing.horizontalN, ofSection),
    derivedInput(["a", "growth by warmth"], [strand.expansionPerC, "/°C"], units, ["strandType", strand.id]),
    temperature("T", "temperature in this condition", hung.temperatureDegC, ofWeather),
    temperature("T0", "temperature at stringing", section.stringingDegC, ofSection),
  ];
}

export type TensionFacts = NonNullable<ReturnType<typeof tensionFacts>>;

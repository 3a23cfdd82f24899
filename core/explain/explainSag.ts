import type { ClearanceCase } from "../model/catalogueRows.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { pointLoadShearN2, spanSag } from "../plant/spanSag.ts";
import { formatForce } from "../units/formatForce.ts";
import { formatLength } from "../units/formatLength.ts";
import { formatTemperature } from "../units/formatTemperature.ts";
import { formatWeightPerLength } from "../units/formatWeightPerLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput, plainInput, saidInput } from "./inputs.ts";

const caseWords = { stringing: "at stringing", hot: "hot", iced: "under ice" } as const;
const levelSupports = "The span is taken by itself and clamped at both poles; the strand carries all tension.";

/** Midspan sag of a span in one condition. */
export function explainSag(
  plant: Plant,
  spanId: string,
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Sag ${caseWords[part]}, span ${spanName(plant, spanId)}`;
  const sag = spanSag(plant, spanId);
  const { strandSectionId } = plant.rowOf("span", spanId);
  if (sag.kind === "unknown" || strandSectionId === null) return { kind: "unknown", title, why: whyOf(sag) };
  const { loadNPerM, horizontalN, sagM, pointLoads } = sag[part];
  const districtId = plant.settings().loadingDistrictId;
  const hasLoads = pointLoads.length > 0;
  return {
    kind: "known",
    title,
    words: hasLoads
      ? "Bending moment at midspan of a beam under the same loads, over the horizontal tension."
      : "Load per length times the span squared, over eight times the horizontal tension.",
    formula: hasLoads ? "(w · L² / 8 + M) / H" : "w · L² / (8 · H)",
    inputs: [
      saidInput(
        ["w", part === "iced" ? "load per length with the district's ice" : "weight of strand, cables and lashing"],
        [loadNPerM, "N/m"],
        formatWeightPerLength(loadNPerM, units),
        part === "iced" ? ["loadingDistrict", districtId] : ["strandSection", strandSectionId],
      ),
      lengthInput(["L", "span length"], sag.lengthM, [units, "span"], ["span", spanId]),
      ...(hasLoads
        ? [
            plainInput(
              ["M", "moment of terminals and coils at midspan"],
              sagM * horizontalN - (loadNPerM * sag.lengthM ** 2) / 8,
              "N·m",
              ["span", spanId],
            ),
          ]
        : []),
      saidInput(["H", "horizontal tension in this condition"], [horizontalN, "N"], formatForce(horizontalN, units), [
        "strandSection",
        strandSectionId,
      ]),
    ],
    result: { symbol: "D", value: sagM, unit: "m", text: formatLength(sagM, units, "sag") },
    limit: null,
    source: "bending moment of the equivalent beam over the tension, by the parabola; textbook statics",
    assumed: [levelSupports, loadWords(part)],
  };
}

/** Horizontal tension of a span in one condition: from its stringing sag, or by change of state from there. */
export function explainTension(
  plant: Plant,
  spanId: string,
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Tension ${caseWords[part]}, span ${spanName(plant, spanId)}`;
  const sag = spanSag(plant, spanId);
  const { strandSectionId } = plant.rowOf("span", spanId);
  if (sag.kind === "unknown" || strandSectionId === null) return { kind: "unknown", title, why: whyOf(sag) };
  const section = plant.rowOf("strandSection", strandSectionId);
  const strand = plant.rowOf("strandType", section.strandTypeId);
  const state = sag[part];
  const weight = (symbol: string, name: string, loadNPerM: number) =>
    saidInput([symbol, name], [loadNPerM, "N/m"], formatWeightPerLength(loadNPerM, units), null);
  const length = lengthInput(["L", "span length"], sag.lengthM, [units, "span"], ["span", spanId]);
  const result = {
    symbol: "H",
    value: state.horizontalN,
    unit: "N",
    text: formatForce(state.horizontalN, units),
  };
  if (part === "stringing")
    return {
      kind: "known",
      title,
      words: "Weight per length times the span, over eight times the stringing sag as a part of the span.",
      formula: "w · L / (8 · f)",
      inputs: [
        weight("w", "weight of strand, cables and lashing", state.loadNPerM),
        length,
        plainInput(["f", "stringing sag over span"], section.stringingSagFrac, "", ["strandSection", section.id]),
      ],
      result,
      limit: null,
      source: "equilibrium of half a span, by the parabola; textbook statics",
      assumed: [levelSupports],
    };
  const temperature = (
    symbol: string,
    name: string,
    degC: number,
    from: readonly ["strandSection" | "loadingDistrict", string],
  ) => saidInput([symbol, name], [degC, "°C"], formatTemperature(degC, units), from);
  const districtId = plant.settings().loadingDistrictId;
  return {
    kind: "known",
    title,
    words:
      "The strand stretches by the tension and grows by the warmth between the stringing state and this one. H is the one tension at which both lengths fit the span; put in, the formula gives H back.",
    formula: "√((w² · L² / 12 + E) · K / (2 · (H + w0² · L² · K / (24 · H0²) + a · (T - T0) · K - H0)))",
    inputs: [
      weight("w", "load per length in this condition", state.loadNPerM),
      length,
      saidInput(
        ["K", "metal area times modulus"],
        [strand.areaM2 * strand.modulusPa, "N"],
        formatForce(strand.areaM2 * strand.modulusPa, units),
        ["strandType", strand.id],
      ),
      saidInput(["H", "horizontal tension found"], [state.horizontalN, "N"], result.text, null),
      weight("w0", "weight per length at stringing", sag.stringing.loadNPerM),
      saidInput(
        ["H0", "horizontal tension at stringing"],
        [sag.stringing.horizontalN, "N"],
        formatForce(sag.stringing.horizontalN, units),
        ["strandSection", section.id],
      ),
      plainInput(["a", "growth by warmth"], strand.expansionPerC, "/°C", ["strandType", strand.id]),
      plainInput(
        ["E", "what terminals and coils add to the mean square of the shear"],
        pointLoadShearN2(sag.lengthM, state),
        "N²",
        ["span", spanId],
      ),
      temperature("T", "temperature in this condition", state.temperatureDegC, ["loadingDistrict", districtId]),
      temperature("T0", "temperature at stringing", section.stringingDegC, ["strandSection", section.id]),
    ],
    result,
    limit: null,
    source: "change of state of an elastic strand, by the parabola; textbook statics",
    assumed: [levelSupports, loadWords(part), "Creep of the strand is not in it."],
  };
}

function loadWords(part: ClearanceCase): string {
  return part === "stringing"
    ? "Terminals and coils do not hang on it yet."
    : "Terminals and coils hang in it by their weights; ice on them and closures are not counted.";
}

function whyOf(sag: ReturnType<typeof spanSag>): string {
  return sag.kind === "unknown" ? sag.why : "The span carries no strand of ours.";
}

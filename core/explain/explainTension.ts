import type { StrengthCase } from "../model/loadRows.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { type HungState, pointLoadShearN2, spanSag } from "../plant/spanSag.ts";
import { stateIn } from "../plant/strength.ts";
import { formatForce } from "../units/formatForce.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { extremeWords } from "./extremeWords.ts";
import { derivedInput, plainInput } from "./inputs.ts";
import { rowChanged, rowStringing } from "./rowTension.ts";
import { hungThings, loadWords, strungWords, whyNoState } from "./strungWords.ts";
import { type CaseHung, stateWords, type TensionFacts, type TensionFormula, tensionFacts } from "./tensionFacts.ts";

/** Horizontal tension of a span in one condition: from its stringing sag, or by change of state from there. */
export function explainTension(
  plant: Plant,
  spanId: string,
  part: StrengthCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Tension ${caseTitles[part]}, span ${spanName(plant, spanId)}`;
  const facts = tensionFacts(plant, spanId, units);
  const hung = stateIn(plant, spanId, part);
  const formula = facts && hung && formulaOf(plant, spanId, [part, hung], facts);
  if (!facts || !hung || !formula) return { kind: "unknown", title, why: whyNoState(spanSag(plant, spanId)) };
  const { horizontalN } = hung;
  return {
    kind: "known",
    title,
    ...formula,
    result: { symbol: "H", value: horizontalN, unit: "N", text: formatForce(horizontalN, units) },
    limit: null,
    source: `${part === "stringing" ? "equilibrium of half a span" : "change of state of an elastic strand"}, by the parabola; textbook statics`,
    assumed: [
      ...strungWords(plant, spanId, facts.sag, units),
      ...(part === "stringing" ? [] : [loadWords(part), "Creep of the strand is not in it."]),
      ...extremeWords(plant, spanId, part, units),
    ],
  };
}

function formulaOf(
  plant: Plant,
  spanId: string,
  [part, hung]: readonly [StrengthCase, HungState],
  facts: TensionFacts,
): TensionFormula | null {
  const slips = facts.sag.atPoles === "slipping";
  if (part === "stringing") return slips ? rowStringing(plant, spanId, facts) : spanStringing(facts);
  return slips ? rowChanged(plant, spanId, { part, hung }, facts) : spanChanged(plant, spanId, { part, hung }, facts);
}

function spanStringing({ sag, span, slope, weight, stringingSag }: TensionFacts): TensionFormula {
  const isLevel = sag.riseM === 0;
  return {
    words: "Weight of the span, over eight times the stringing sag as a part of the span.",
    formula: isLevel ? "w · L / (8 · f)" : "w · c / (8 · f)",
    inputs: [
      weight("w", "weight of strand, cables and lashing", sag.stringing.alongNPerM),
      isLevel ? span : slope,
      stringingSag,
    ],
  };
}

function spanChanged(
  plant: Plant,
  spanId: string,
  { part, hung }: CaseHung,
  { sag, span, units, weight, state }: TensionFacts,
): TensionFormula {
  const isLevel = sag.riseM === 0;
  const slopeFrac = sag.lengthM / Math.hypot(sag.lengthM, sag.riseM);
  return {
    words: `${stateWords} the span; put in, the formula gives H back.`,
    formula: isLevel
      ? "√((w² · L² / 12 + E) · K / (2 · (H + w0² · L² · K / (24 · H0²) + a · (T - T0) · K - H0)))"
      : "√(k³ · (w² · L² / 12 + k² · E) · K / (2 · (H + k³ · w0² · L² · K / (24 · H0²) + k · a · (T - T0) · K - H0)))",
    inputs: [
      weight("w", "load per length in this condition", hung.alongNPerM),
      weight("w0", "weight per length at stringing", sag.stringing.alongNPerM),
      span,
      ...(isLevel
        ? []
        : [plainInput(["k", "span over the distance along the slope"], slopeFrac, "", ["span", spanId])]),
      derivedInput(
        ["E", `what ${hungThings(plant, part, units)} add to the mean square of the shear`],
        [pointLoadShearN2(sag.lengthM, hung), "N²"],
        units,
        ["span", spanId],
      ),
      ...state(part, hung),
    ],
  };
}

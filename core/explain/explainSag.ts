import type { StrengthCase } from "../model/loadRows.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { spanSag } from "../plant/spanSag.ts";
import { stateIn } from "../plant/strength.ts";
import { formatForce } from "../units/formatForce.ts";
import { formatLength } from "../units/formatLength.ts";
import { formatWeightPerLength } from "../units/formatWeightPerLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { extremeWords } from "./extremeWords.ts";
import { derivedInput, lengthInput, saidInput } from "./inputs.ts";
import { hungThings, loadWords, strungWords, whyNoState } from "./strungWords.ts";
import { weatherRow } from "./weatherRow.ts";

const loadNames: Readonly<Record<StrengthCase, string>> = {
  stringing: "weight of strand, cables and lashing",
  hot: "weight of strand, cables and lashing",
  iced: "load per length with the district's ice",
  loaded: "load per length in the plane it is blown into, with the district's constant",
  extremeWind: "load per length in the plane it is blown into",
  extremeIce: "load per length in the plane it is blown into",
  worker: "weight of strand, cables and lashing",
};

/** Midspan sag of a span in one condition; in wind in the plane it is blown into. */
export function explainSag(
  plant: Plant,
  spanId: string,
  part: StrengthCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Sag ${caseTitles[part]}, span ${spanName(plant, spanId)}`;
  const sag = spanSag(plant, spanId);
  const { strandSectionId } = plant.rowOf("span", spanId);
  const hung = stateIn(plant, spanId, part);
  if (sag.kind === "unknown" || strandSectionId === null || hung === null)
    return { kind: "unknown", title, why: whyNoState(sag) };
  const { alongNPerM, loadNPerM, horizontalN, sagM, pointLoads } = hung;
  const weighsAsStrung = part === "hot" || part === "worker";
  const hasLoads = pointLoads.length > 0;
  const load = sag.riseM === 0 ? "w · L²" : "w · c · L";
  return {
    kind: "known",
    title,
    words: hasLoads
      ? "Bending moment at midspan of a beam under the same loads, over the horizontal tension."
      : "Load per length times the length it hangs along and the span, over eight times the horizontal tension.",
    formula: hasLoads ? `(${load} / 8 + M) / H` : `${load} / (8 · H)`,
    inputs: [
      saidInput(
        ["w", loadNames[part]],
        [alongNPerM, "N/m"],
        formatWeightPerLength(alongNPerM, units),
        weatherRow(plant, weighsAsStrung ? "stringing" : part, strandSectionId),
      ),
      ...(sag.riseM === 0
        ? []
        : [
            lengthInput(
              ["c", "distance between the supports along the slope"],
              Math.hypot(sag.lengthM, sag.riseM),
              [units, "height"],
              ["span", spanId],
            ),
          ]),
      lengthInput(["L", "span length"], sag.lengthM, [units, "span"], ["span", spanId]),
      ...(hasLoads
        ? [
            derivedInput(
              ["M", `moment of ${hungThings(plant, part, units)} at midspan`],
              [sagM * horizontalN - (loadNPerM * sag.lengthM ** 2) / 8, "N·m"],
              units,
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
    assumed: [...strungWords(plant, spanId, sag, units), loadWords(part), ...extremeWords(plant, spanId, part, units)],
  };
}

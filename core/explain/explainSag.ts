import type { ClearanceCase } from "../model/catalogueRows.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { spanSag } from "../plant/spanSag.ts";
import { formatForce } from "../units/formatForce.ts";
import { formatLength } from "../units/formatLength.ts";
import { formatWeightPerLength } from "../units/formatWeightPerLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { clearanceCaseWords } from "./clearanceCaseWords.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { derivedInput, lengthInput, saidInput } from "./inputs.ts";
import { loadWords, strungWords, whyNoSag } from "./strungWords.ts";

/** Midspan sag of a span in one condition. */
export function explainSag(
  plant: Plant,
  spanId: string,
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Sag ${clearanceCaseWords[part]}, span ${spanName(plant, spanId)}`;
  const sag = spanSag(plant, spanId);
  const { strandSectionId } = plant.rowOf("span", spanId);
  if (sag.kind === "unknown" || strandSectionId === null) return { kind: "unknown", title, why: whyNoSag(sag) };
  const { alongNPerM, loadNPerM, horizontalN, sagM, pointLoads } = sag[part];
  const districtId = plant.settings().loadingDistrictId;
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
        ["w", part === "iced" ? "load per length with the district's ice" : "weight of strand, cables and lashing"],
        [alongNPerM, "N/m"],
        formatWeightPerLength(alongNPerM, units),
        part === "iced" ? ["loadingDistrict", districtId] : ["strandSection", strandSectionId],
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
              ["M", "moment of terminals and coils at midspan"],
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
    assumed: [...strungWords(plant, spanId, sag, units), loadWords(part)],
  };
}

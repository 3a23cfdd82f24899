import type { StrengthCase } from "../model/loadRows.ts";
import { extremeRow } from "../plant/extremeWeather.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { spanSag } from "../plant/spanSag.ts";
import { stateIn, strengthLimitFor } from "../plant/strength.ts";
import { catalogueBasis } from "../rules/rule.ts";
import { fixedText } from "../units/fixedText.ts";
import { formatForce } from "../units/formatForce.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { extremeWords } from "./extremeWords.ts";
import { saidInput } from "./inputs.ts";
import { loadWords, strungWords, whyNoState } from "./strungWords.ts";
import { weatherRow } from "./weatherRow.ts";

const noLimit = "The strength set has no limit for strand in this case.";
const source = "level and vertical pull on the pole the span hangs heavier on; textbook statics";

/** Tension of a span at its supports in a case, against what the strength set allows. */
export function explainSupportTension(
  plant: Plant,
  spanId: string,
  part: StrengthCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Tension ${caseTitles[part]}, span ${spanName(plant, spanId)}`;
  const pull = supportsOf(plant, spanId, part, units);
  if (typeof pull === "string") return { kind: "unknown", title, why: pull };
  const { supportN, breakingN } = pull;
  const limit = strengthLimitFor(plant, "strand", part);
  return {
    kind: "known",
    title,
    words: `Tension of the strand at the supports ${caseTitles[part]}.`,
    formula: "√(H² + V²)",
    inputs: pull.inputs,
    result: { symbol: "T", value: supportN, unit: "N", text: formatForce(supportN, units) },
    limit: limit
      ? {
          words: "Largest tension the strength set allows",
          value: limit.limitFrac * breakingN,
          text: formatForce(limit.limitFrac * breakingN, units),
          basis: catalogueBasis(limit),
        }
      : null,
    source,
    assumed: [...pull.held, ...(limit ? [] : [noLimit])],
  };
}

/** Tension of a span at its supports in a case as a part of what the strand breaks at. */
export function explainTensionShare(
  plant: Plant,
  spanId: string,
  part: StrengthCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Share of the breaking strength ${caseTitles[part]}, span ${spanName(plant, spanId)}`;
  const pull = supportsOf(plant, spanId, part, units);
  if (typeof pull === "string") return { kind: "unknown", title, why: pull };
  const { supportN, breakingN } = pull;
  const limit = strengthLimitFor(plant, "strand", part);
  return {
    kind: "known",
    title,
    words: "Tension at the supports, over the rated breaking strength of the strand.",
    formula: "√(H² + V²) / B",
    inputs: [
      ...pull.inputs,
      saidInput(["B", "rated breaking strength"], [breakingN, "N"], formatForce(breakingN, units), [
        "strandType",
        pull.strandTypeId,
      ]),
    ],
    result: { symbol: "share", value: supportN / breakingN, unit: "", text: percent(supportN / breakingN) },
    limit: limit
      ? {
          words: "Largest share the strength set allows",
          value: limit.limitFrac,
          text: percent(limit.limitFrac),
          basis: catalogueBasis(limit),
        }
      : null,
    source,
    assumed: [`Tension at the supports is ${formatForce(supportN, units)}.`, ...pull.held, ...(limit ? [] : [noLimit])],
  };
}

/** What both explanations take from the span, or why nobody can tell. */
function supportsOf(plant: Plant, spanId: string, part: StrengthCase, units: UnitSystem) {
  const sag = spanSag(plant, spanId);
  const { strandSectionId } = plant.rowOf("span", spanId);
  const hung = stateIn(plant, spanId, part);
  if (sag.kind === "unknown" || strandSectionId === null || hung === null) return whyNoState(sag);
  const { horizontalN, supportDownN, supportN } = hung;
  const weather = weatherRow(plant, part, strandSectionId);
  return {
    supportN,
    held: [
      ...strungWords(plant, spanId, sag, units),
      ...(part === "stringing" ? [] : [loadWords(part)]),
      ...extremeWords(plant, spanId, part, units),
    ],
    breakingN: sag.tension.breakingN,
    strandTypeId: plant.rowOf("strandSection", strandSectionId).strandTypeId,
    inputs: [
      saidInput(["H", `horizontal tension ${caseTitles[part]}`], [horizontalN, "N"], formatForce(horizontalN, units), [
        "strandSection",
        strandSectionId,
      ]),
      saidInput(
        ["V", `vertical pull on that pole ${caseTitles[part]}${blownWords(plant, part)}`],
        [supportDownN, "N"],
        formatForce(supportDownN, units),
        weather,
      ),
    ],
  };
}

/** Whose weather it is, and that its wind is taken with the weight. */
function blownWords(plant: Plant, part: StrengthCase): string {
  switch (part) {
    case "loaded": {
      const { name } = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
      return ` by ${name}, its wind and constant taken with the weight`;
    }
    case "extremeWind":
    case "extremeIce":
      return `: ${extremeRow(plant, part)?.name ?? ""}, its wind taken with the weight`;
    default:
      return "";
  }
}

function percent(frac: number): string {
  return `${fixedText(frac * 100, 1)} %`;
}

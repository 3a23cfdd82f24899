import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { spanSag } from "../plant/spanSag.ts";
import { companySetting } from "../rules/rule.ts";
import { fixedText } from "../units/fixedText.ts";
import { formatForce } from "../units/formatForce.ts";
import { formatWeightPerLength } from "../units/formatWeightPerLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput, saidInput } from "./inputs.ts";

/** Tension of a span under the full district load as a part of what the strand breaks at. */
export function explainTensionShare(plant: Plant, spanId: string, units: UnitSystem): Explanation | NoExplanation {
  const title = `Share of the breaking strength, span ${spanName(plant, spanId)}`;
  const sag = spanSag(plant, spanId);
  const { strandSectionId } = plant.rowOf("span", spanId);
  if (sag.kind === "unknown" || strandSectionId === null)
    return { kind: "unknown", title, why: sag.kind === "unknown" ? sag.why : "The span carries no strand of ours." };
  const { horizontalN, loadNPerM, supportN, breakingN } = sag.tension;
  const { loadingDistrictId, maxStrandFrac } = plant.settings();
  const district = plant.rowOf("loadingDistrict", loadingDistrictId);
  const { strandTypeId } = plant.rowOf("strandSection", strandSectionId);
  return {
    kind: "known",
    title,
    words: "Tension at the supports under the district's load, over the rated breaking strength of the strand.",
    formula: "(H + w² · L² / (8 · H)) / B",
    inputs: [
      saidInput(
        ["H", "horizontal tension under the district's load"],
        [horizontalN, "N"],
        formatForce(horizontalN, units),
        ["strandSection", strandSectionId],
      ),
      saidInput(
        ["w", `load per length of ${district.name}, wind and constant in it`],
        [loadNPerM, "N/m"],
        formatWeightPerLength(loadNPerM, units),
        ["loadingDistrict", district.id],
      ),
      lengthInput(["L", "span length"], sag.lengthM, [units, "span"], ["span", spanId]),
      saidInput(["B", "rated breaking strength"], [breakingN, "N"], formatForce(breakingN, units), [
        "strandType",
        strandTypeId,
      ]),
    ],
    result: { symbol: "share", value: supportN / breakingN, unit: "", text: percent(supportN / breakingN) },
    limit: {
      words: "Largest share the company allows",
      value: maxStrandFrac,
      text: percent(maxStrandFrac),
      basis: companySetting("maxStrandFrac"),
    },
    source: "tension at a level support is H + w D; textbook statics",
    assumed: [`Tension at the supports is ${formatForce(supportN, units)}; both are taken as level.`],
  };
}

function percent(frac: number): string {
  return `${fixedText(frac * 100, 1)} %`;
}

import { governingOfGuy } from "../plant/guyStrength.ts";
import type { FactorOfLoad } from "../plant/loadFactors.ts";
import type { Plant } from "../plant/plant.ts";
import { guyPullN } from "../plant/poleGuys.ts";
import { polePull, strungSpans } from "../plant/poleLoad.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { catalogueBasis } from "../rules/rule.ts";
import { formatForce } from "../units/formatForce.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { extremeWords } from "./extremeWords.ts";
import { lengthInput, plainInput, saidInput } from "./inputs.ts";
import { weatherRow } from "./weatherRow.ts";

/** Tension along a guy in its governing case with the load factors, against what its strand or its anchor may be pulled with. */
export function explainGuy(plant: Plant, guyId: string, units: UnitSystem): Explanation | NoExplanation {
  const { poleId, heightM, leadM, anchorN } = plant.rowOf("guy", guyId);
  const { condition, tensionN, weakest } = governingOfGuy(plant, guyId);
  const title = `Tension of the guy at pole ${plant.rowOf("pole", poleId).tag} ${caseTitles[condition]}`;
  const pull = polePull(plant, poleId, condition);
  const heldN = guyPullN(plant, guyId, condition);
  if (tensionN === null || pull === null || heldN === null)
    return { kind: "unknown", title, why: "The tension of a span at this pole is unknown." };
  const strand = strandAtPole(plant, poleId);
  const wholeN = Math.hypot(pull.factored.eastN, pull.factored.northN);
  const weather = weatherRow(plant, condition, "");
  const [spanId = ""] = strungSpans(plant, poleId);
  const force = (symbol: string, name: string, valueN: number) =>
    saidInput([symbol, name], [valueN, "N"], formatForce(valueN, units), weather);
  const factor = (symbol: string, name: string, { factor, row }: FactorOfLoad) =>
    plainInput([symbol, name], factor, "", row && ["loadFactor", row.id]);
  return {
    kind: "known",
    title,
    words:
      "The guy's share of the level pull of all strand at the pole and of the wind on half of each span, both with their load factors, by the leverage of strand over guy, along the slope of the guy: the pole is taken as hinged at the ground.",
    formula: "(f · T + v · W) · s · (h / g) · √(g² + l²) / l",
    inputs: [
      force("T", "level pull of all strand at the pole together", pull.tensionN),
      factor("f", "load factor of that pull", pull.tension),
      force("W", "wind on half of each span, blowing the way of that pull", pull.windN),
      factor("v", "load factor of the wind", pull.wind),
      plainInput(["s", "part of it this guy holds"], wholeN === 0 ? 0 : heldN / wholeN, "", ["guy", guyId]),
      lengthInput(
        ["h", "our strand above ground"],
        strand.heightM,
        [units, "height"],
        strand.attachmentId === null ? ["settings", plant.settings().id] : ["attachment", strand.attachmentId],
      ),
      lengthInput(["g", "guy above ground at the pole"], heightM, [units, "height"], ["guy", guyId]),
      lengthInput(["l", "lead, from the pole to the anchor"], leadM, [units, "height"], ["guy", guyId]),
    ],
    result: { symbol: "G", value: tensionN, unit: "N", text: formatForce(tensionN, units) },
    limit: weakest
      ? {
          words: `Largest pull on the ${weakest.words}: ${Math.round(weakest.limit.limitFrac * 1000) / 10} % of ${formatForce(weakest.strengthN, units)}`,
          value: weakest.mostN,
          text: formatForce(weakest.mostN, units),
          basis: catalogueBasis(weakest.limit),
        }
      : null,
    source: "moments about the ground line; textbook statics",
    assumed: [
      "The ground from pole to anchor is taken as level; guys in one direction share evenly. Wind presses on a span by the square of the sine of its angle to it; pole, terminals and coils stand in no wind.",
      ...factorWords(pull.tension, pull.wind),
      ...(anchorN === null ? ["Nobody told what the anchor holds: it is not held against anything."] : []),
      ...(weakest ? [] : ["The strength set has no limit for guys."]),
      ...extremeWords(plant, spanId, condition, units),
    ],
  };
}

function factorWords(tension: FactorOfLoad, wind: FactorOfLoad): readonly string[] {
  if (tension.row && wind.row) return [];
  return ["A load without a factor in the strength set for this case is counted as it is, with the factor 1."];
}

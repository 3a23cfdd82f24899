import { weakestOfGuy } from "../plant/guyStrength.ts";
import type { Plant } from "../plant/plant.ts";
import { guyPullN, guyTensionN } from "../plant/poleGuys.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { catalogueBasis } from "../rules/rule.ts";
import { formatForce } from "../units/formatForce.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput, saidInput } from "./inputs.ts";

/** Tension along a guy under the district's load, against what its strand or its anchor may be pulled with. */
export function explainGuy(plant: Plant, guyId: string, units: UnitSystem): Explanation | NoExplanation {
  const { poleId, heightM, leadM, anchorN } = plant.rowOf("guy", guyId);
  const title = `Tension of the guy at pole ${plant.rowOf("pole", poleId).tag}`;
  const tensionN = guyTensionN(plant, guyId);
  const pullN = guyPullN(plant, guyId);
  if (tensionN === null || pullN === null)
    return { kind: "unknown", title, why: "The tension of a span at this pole is unknown." };
  const strand = strandAtPole(plant, poleId);
  const weakest = weakestOfGuy(plant, guyId);
  const { id: districtId, name: district } = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
  return {
    kind: "known",
    title,
    words:
      "Level pull the guy holds, by the leverage of strand over guy, along the slope of the guy: the pole is taken as hinged at the ground.",
    formula: "P · (h / g) · √(g² + l²) / l",
    inputs: [
      saidInput(
        ["P", `its share of the level pull of all strand at the pole under the load of ${district}`],
        [pullN, "N"],
        formatForce(pullN, units),
        ["loadingDistrict", districtId],
      ),
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
      "The ground from pole to anchor is taken as level; guys in one direction share evenly.",
      ...(anchorN === null ? ["Nobody told what the anchor holds: it is not held against anything."] : []),
      ...(weakest ? [] : ["The strength set has no limit for guys."]),
    ],
  };
}

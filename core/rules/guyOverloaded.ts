import { governingOfGuy } from "../plant/guyStrength.ts";
import { strungSpans } from "../plant/poleLoad.ts";
import { caseWords } from "./caseWords.ts";
import { leaningWords, weatherOf } from "./leaningWords.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const guyOverloaded: Rule = {
  id: "guy-overloaded",
  title: "Guys and anchors hold what the strand pulls, within their part of the breaking strength",
  compares:
    "The pull along a guy with the load factors of the strength set, under the district's load and what extreme weather the settings ask for, against the part of the breaking strength of its strand, and of what its anchor holds, that the set allows.",
  severity: "error",
  basis: { ...routeItself, document: "strength set of the settings" },
  each: "guy",
  *check(plant, id) {
    const { poleId, strandTypeId } = plant.rowOf("guy", id);
    const { condition, tensionN: measured, weakest } = governingOfGuy(plant, id);
    if (measured === null || !weakest || !isOver(measured, weakest.mostN)) return;
    const strand = plant.rowOf("strandType", strandTypeId);
    yield {
      subjects: [
        { table: "guy", id },
        { table: "pole", id: poleId },
      ],
      message: `At pole ${plant.rowOf("pole", poleId).tag} the ${weakest.words} is pulled too hard ${caseWords(plant, condition)}${leaningWords([...weatherOf(plant, strungSpans(plant, poleId), [condition]), strand])}.`,
      measured,
      limit: weakest.mostN,
      unit: "N",
      fixes: [],
      basis: catalogueBasis(weakest.limit),
    };
  },
};

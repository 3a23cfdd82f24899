import { spanName } from "../plant/names.ts";
import { spanSag } from "../plant/spanSag.ts";
import { chosenCases, stateIn, strengthLimitFor } from "../plant/strength.ts";
import { caseWords } from "./caseWords.ts";
import { leaningWords, weatherOf } from "./leaningWords.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const strandTension: Rule = {
  id: "strand-tension",
  title: "Strand tension stays within its part of the breaking strength in every case",
  compares:
    "The tension of the strand at its supports at stringing, hot, under ice, under the district's load, and in extreme wind, under extreme ice and with a worker on it where the settings ask for that, against the part of its rated breaking strength the strength set allows in each.",
  severity: "error",
  basis: { ...routeItself, document: "strength set of the settings" },
  each: "span",
  *check(plant, id) {
    const { strandSectionId } = plant.rowOf("span", id);
    const sag = spanSag(plant, id);
    if (strandSectionId === null || sag.kind === "unknown") return;
    const { breakingN } = sag.tension;
    const over = chosenCases(plant)
      .flatMap((condition) => {
        const limit = strengthLimitFor(plant, "strand", condition);
        const state = limit && stateIn(plant, id, condition);
        return limit && state ? [{ condition, limit, tensionN: state.supportN }] : [];
      })
      .filter(({ limit, tensionN }) => isOver(tensionN, limit.limitFrac * breakingN))
      .sort((a, b) => b.tensionN / b.limit.limitFrac - a.tensionN / a.limit.limitFrac);
    const [worst] = over;
    if (!worst) return;
    const { strandTypeId } = plant.rowOf("strandSection", strandSectionId);
    const conditions = over.map((one) => one.condition);
    const leaning = leaningWords([...weatherOf(plant, [id], conditions), plant.rowOf("strandType", strandTypeId)]);
    yield {
      subjects: [
        { table: "span", id },
        { table: "strandSection", id: strandSectionId },
      ],
      message: `In span ${spanName(plant, id)} the strand is pulled too hard ${conditions.map((one) => caseWords(plant, one)).join(" and ")}${leaning}.`,
      measured: worst.tensionN,
      limit: worst.limit.limitFrac * breakingN,
      unit: "N",
      fixes: [],
      basis: catalogueBasis(worst.limit),
    };
  },
};

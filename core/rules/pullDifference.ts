import type { StrandType } from "../model/tables.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { strungSpans } from "../plant/poleLoad.ts";
import { spanSag } from "../plant/spanSag.ts";
import { chosenCases, stateIn, strengthLimitFor } from "../plant/strength.ts";
import { caseWords } from "./caseWords.ts";
import { leaningWords, weatherOf } from "./leaningWords.ts";
import { catalogueBasis, type Hit, type Rule, routeItself } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const pullDifference: Rule = {
  id: "pull-difference",
  title: "No slack span hangs beside a tight one",
  compares:
    "The tension of one span against that of the next along the strand, against the part of the breaking strength the strength set lets them differ by.",
  severity: "warning",
  basis: { ...routeItself, document: "strength set of the settings" },
  each: "pole",
  *check(plant, id) {
    const spans = strungSpans(plant, id);
    for (const [at, spanId] of spans.entries()) {
      const { strandSectionId } = plant.rowOf("span", spanId);
      const others = spans.slice(at + 1).filter((one) => plant.rowOf("span", one).strandSectionId === strandSectionId);
      const hits = others.flatMap((other) => differenceHits(plant, id, [spanId, other]));
      const [worst] = hits.sort((a, b) => (b.measured ?? 0) / (b.limit ?? 1) - (a.measured ?? 0) / (a.limit ?? 1));
      if (worst) yield worst;
    }
  },
};

function differenceHits(plant: Plant, poleId: string, [a, b]: readonly [string, string]): Hit[] {
  const [sagA, sagB] = [spanSag(plant, a), spanSag(plant, b)];
  if (sagA.kind === "unknown" || sagB.kind === "unknown") return [];
  return chosenCases(plant).flatMap((condition): Hit[] => {
    const row = strengthLimitFor(plant, "pullDifference", condition);
    const [stateA, stateB] = [stateIn(plant, a, condition), stateIn(plant, b, condition)];
    if (!stateA || !stateB) return [];
    const difference = stateA.horizontalN - stateB.horizontalN;
    const limit = (row?.limitFrac ?? 0) * Math.min(sagA.tension.breakingN, sagB.tension.breakingN);
    if (!row || !isOver(Math.abs(difference), limit)) return [];
    const leaning = [...weatherOf(plant, [a, b], [condition]), ...strandsOf(plant, [a, b])];
    const [slack, tight] = difference < 0 ? [a, b] : [b, a];
    return [
      {
        subjects: [
          { table: "pole", id: poleId },
          { table: "span", id: slack },
          { table: "span", id: tight },
        ],
        message: `At pole ${plant.rowOf("pole", poleId).tag} slack span ${spanName(plant, slack)} hangs beside tight span ${spanName(plant, tight)} ${caseWords(plant, condition)}${leaningWords(leaning)}.`,
        measured: Math.abs(difference),
        limit,
        unit: "N",
        fixes: [],
        basis: catalogueBasis(row),
      },
    ];
  });
}

/** The strand of some spans: what may be pulled leans on what it breaks at. */
function strandsOf(plant: Plant, spanIds: readonly string[]): StrandType[] {
  return spanIds.flatMap((id) => {
    const { strandSectionId } = plant.rowOf("span", id);
    if (strandSectionId === null) return [];
    return [plant.rowOf("strandType", plant.rowOf("strandSection", strandSectionId).strandTypeId)];
  });
}

import type { Guy } from "../model/tables.ts";
import { clearanceLimitFor } from "../plant/clearance.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

/** Whether guys stand in the climbing space nobody has told; whoever hangs them keeps all but one, or a pair, out of it. */
export const guysCrowdClimbingSpace: Rule = {
  id: "guys-crowd-climbing-space",
  title: "A climber passes one guy at a time, or a pair",
  compares:
    "The guys of a pole within the height of one level, against one, or two no farther apart than the clearance set counts as a pair.",
  severity: "note",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "pole",
  *check(plant, id) {
    const level = clearanceLimitFor(plant, "climbingLevel");
    const pair = clearanceLimitFor(plant, "guyPair");
    if (!level || !pair) return;
    const guys = plant
      .where("guy", "poleId", id)
      .map((guyId) => plant.rowOf("guy", guyId))
      .sort((a, b) => a.heightM - b.heightM || (a.id < b.id ? -1 : 1));
    const crowd = guys
      .map((lowest) =>
        guys.filter((one) => one.heightM >= lowest.heightM && !isOver(one.heightM - lowest.heightM, level.limitM)),
      )
      .filter((within) => within.length > 2 || (within.length === 2 && isOver(heightOf(within), pair.limitM)))
      .sort((a, b) => b.length - a.length)[0];
    if (!crowd) return;
    yield {
      subjects: [{ table: "pole", id }, ...crowd.map((guy) => ({ table: "guy" as const, id: guy.id }))],
      message: `On pole ${plant.rowOf("pole", id).tag} ${crowd.length} guys are attached within the height of one level: at most one, or two as a pair, may stand in the climbing space.`,
      measured: heightOf(crowd),
      limit: crowd.length > 2 ? level.limitM : pair.limitM,
      unit: "m",
      fixes: [],
      basis: catalogueBasis(pair),
    };
  },
};

function heightOf(guys: readonly Guy[]): number {
  return Math.max(...guys.map((one) => one.heightM)) - Math.min(...guys.map((one) => one.heightM));
}

import { groundClearance as clearanceOf } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { moveEndIntoRangeFixes } from "./attachmentFix.ts";
import { clearanceHit } from "./clearanceHit.ts";
import { type Rule, routeItself } from "./rule.ts";

export const groundClearance: Rule = {
  id: "ground-clearance",
  title: "The line clears the open ground between crossings",
  compares:
    "The least height of the line over the ground between crossings, at stringing, hot and under ice, against the limit of the clearance set over what the ground counts as.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "span",
  *check(plant, id) {
    if (plant.rowOf("span", id).strandSectionId === null) return;
    const clearance = clearanceOf(plant, id);
    if (clearance === null) return;
    const hit = clearanceHit(plant, plant.settings().groundSurface, clearance, {
      place: `Over the ground in span ${spanName(plant, id)}`,
      spanId: id,
      subjects: [{ table: "span", id }],
    });
    if (hit) yield { ...hit, fixes: moveEndIntoRangeFixes(plant, id) };
  },
};

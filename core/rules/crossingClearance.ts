import { crossingClearance as clearanceOf } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { moveEndIntoRangeFixes } from "./attachmentFix.ts";
import { clearanceHit } from "./clearanceHit.ts";
import { type Rule, routeItself } from "./rule.ts";

export const crossingClearance: Rule = {
  id: "crossing-clearance",
  title: "The line clears what it crosses",
  compares:
    "The least height of the line over the whole width of a crossing, strung, hot and iced, against the clearance set's limit for its surface.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "crossing",
  *check(plant, id) {
    const { name, surface, spanId } = plant.rowOf("crossing", id);
    const hit = clearanceHit(plant, surface, clearanceOf(plant, id), {
      place: `Over ${name || `the ${surface}`} in span ${spanName(plant, spanId)}`,
      spanId,
      subjects: [
        { table: "crossing", id },
        { table: "span", id: spanId },
      ],
    });
    if (hit) yield { ...hit, fixes: moveEndIntoRangeFixes(plant, spanId) };
  },
};

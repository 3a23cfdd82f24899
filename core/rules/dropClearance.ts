import { dropClearance as clearanceOf, dropSurface } from "../plant/dropClearance.ts";
import { surfaceWords } from "../plant/thingWords.ts";
import { moveEndIntoRangeFixes } from "./attachmentFix.ts";
import { clearanceHit } from "./clearanceHit.ts";
import { dropWords } from "./dropWords.ts";
import { type Rule, routeItself } from "./rule.ts";

export const dropClearance: Rule = {
  id: "drop-clearance",
  title: "Drops clear what they cross",
  compares:
    "The least height of a drop over each thing it crosses, in every case of the line it hangs from, against the limit of the clearance set over that surface.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "drop",
  *check(plant, id) {
    const { livingUnitId, terminalId } = plant.rowOf("drop", id);
    const { spanId } = plant.rowOf("terminal", terminalId);
    for (const crossingId of plant.where("dropCrossing", "livingUnitId", livingUnitId)) {
      const { name, surface } = plant.rowOf("dropCrossing", crossingId);
      const hit = clearanceHit(plant, dropSurface(plant, crossingId), clearanceOf(plant, id, crossingId), {
        place: `Over ${name || `the ${surfaceWords(surface)}`} ${dropWords(plant, id)}`,
        spanId,
        subjects: [
          { table: "drop", id },
          { table: "dropCrossing", id: crossingId },
        ],
        what: "drop",
      });
      if (hit) yield { ...hit, fixes: moveEndIntoRangeFixes(plant, spanId) };
    }
  },
};

import { clearanceLimitFor } from "../plant/clearance.ts";
import { dropClearance, dropSurface } from "../plant/dropClearance.ts";
import { surfaceWords } from "../plant/thingWords.ts";
import { dropWords } from "./dropWords.ts";
import { type Rule, routeItself } from "./rule.ts";

export const dropClearanceUnknown: Rule = {
  id: "drop-clearance-unknown",
  title: "The clearance of every drop over what it crosses can be checked",
  compares: "Each thing a drop crosses, against the heights and the limit its clearance needs.",
  severity: "warning",
  basis: routeItself,
  each: "drop",
  *check(plant, id) {
    const { livingUnitId } = plant.rowOf("drop", id);
    for (const crossingId of plant.where("dropCrossing", "livingUnitId", livingUnitId)) {
      const { name, surface } = plant.rowOf("dropCrossing", crossingId);
      const clearance = dropClearance(plant, id, crossingId);
      const hasLimit = clearanceLimitFor(plant, dropSurface(plant, crossingId)) !== undefined;
      if (clearance.kind === "known" && hasLimit) continue;
      const why = clearance.kind === "unknown" ? clearance.why : "The clearance set has no limit for it.";
      yield {
        subjects: [
          { table: "drop", id },
          { table: "dropCrossing", id: crossingId },
        ],
        message: `Over ${name || `the ${surfaceWords(surface)}`} ${dropWords(plant, id)} the clearance is not checked. ${why}`,
        measured: null,
        limit: null,
        unit: "",
        fixes: [],
      };
    }
  },
};

import { clearanceLimitFor } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { companySetting, type Rule } from "./rule.ts";

export const crossingWithoutLimit: Rule = {
  id: "crossing-without-limit",
  title: "The clearance set has a limit for every crossing",
  compares: "The surface of a crossing, against the surfaces the chosen clearance set has limits for.",
  severity: "warning",
  basis: companySetting("clearanceSetId"),
  each: "crossing",
  *check(plant, id) {
    const { name, surface, spanId } = plant.rowOf("crossing", id);
    if (clearanceLimitFor(plant, surface)) return;
    const set = plant.rowOf("clearanceSet", plant.settings().clearanceSetId);
    yield {
      subjects: [
        { table: "crossing", id },
        { table: "clearanceSet", id: set.id },
      ],
      message: `The clearance set ${set.name} has no limit over a ${surface}: ${name || "the crossing"} in span ${spanName(plant, spanId)} is not checked.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

import { crossingClearance } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { type Rule, routeItself } from "./rule.ts";

export const crossingClearanceUnknown: Rule = {
  id: "crossing-clearance-unknown",
  title: "The clearance over every crossing can be computed",
  compares: "What the clearance over a crossing is worked out from, against what the rows tell.",
  severity: "warning",
  basis: routeItself,
  each: "crossing",
  *check(plant, id) {
    const clearance = crossingClearance(plant, id);
    if (clearance.kind === "known") return;
    const { name, surface, spanId } = plant.rowOf("crossing", id);
    yield {
      subjects: [
        { table: "crossing", id },
        { table: "span", id: spanId },
      ],
      message: `Over ${name || `the ${surface}`} in span ${spanName(plant, spanId)} the clearance is unknown. ${clearance.why}`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

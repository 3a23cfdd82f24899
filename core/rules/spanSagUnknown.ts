import { spanName } from "../plant/names.ts";
import { spanSag } from "../plant/spanSag.ts";
import { type Rule, routeItself } from "./rule.ts";

export const spanSagUnknown: Rule = {
  id: "span-sag-unknown",
  title: "The sag of every span with strand can be computed",
  compares: "What the sag of a span is worked out from, against what the rows tell.",
  severity: "warning",
  basis: routeItself,
  each: "span",
  *check(plant, id) {
    if (plant.rowOf("span", id).strandSectionId === null) return;
    const sag = spanSag(plant, id);
    if (sag.kind === "known") return;
    yield {
      subjects: [{ table: "span", id }],
      message: `In span ${spanName(plant, id)} neither tension nor clearance nor separation is checked. ${sag.why}`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

import { spanName } from "../plant/names.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const spanOverLongest: Rule = {
  id: "span-over-longest",
  title: "Spans are no longer than the company builds",
  compares: "The length of a span, against the longest span of the settings.",
  severity: "warning",
  basis: companySetting("maxSpanM"),
  each: "span",
  *check(plant, id) {
    const { lengthM } = plant.rowOf("span", id);
    const limit = plant.settings().maxSpanM;
    if (!isOver(lengthM, limit)) return;
    yield {
      subjects: [{ table: "span", id }],
      message: `Span ${spanName(plant, id)} is longer than the company builds.`,
      measured: lengthM,
      limit,
      unit: "m",
      fixes: [],
    };
  },
};

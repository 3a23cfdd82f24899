import { spansAtPole } from "../plant/geometry.ts";
import { type Rule, routeItself } from "./rule.ts";

export const poleWithoutSpan: Rule = {
  id: "pole-without-span",
  title: "Every pole stands in the line",
  compares: "Each pole, against the ends of the spans: one must end there.",
  severity: "warning",
  basis: routeItself,
  each: "pole",
  *check(plant, id) {
    if (spansAtPole(plant, id).length > 0) return;
    yield {
      subjects: [{ table: "pole", id }],
      message: `No span goes to pole ${plant.rowOf("pole", id).tag}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

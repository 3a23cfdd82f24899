import { spanName } from "../plant/names.ts";
import { type Rule, routeItself } from "./rule.ts";

export const spanInferred: Rule = {
  id: "span-inferred",
  title: "A person has looked at every inferred span",
  compares:
    "How a span came to be: drawn or listed by a person, or inferred from where the poles stand and not yet looked at.",
  severity: "note",
  basis: routeItself,
  each: "span",
  *check(plant, id) {
    if (plant.rowOf("span", id).origin !== "inferred") return;
    yield {
      subjects: [{ table: "span", id }],
      message: `Span ${spanName(plant, id)} was inferred from where the poles stand and waits for a look.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [{ label: "Confirm the span", command: "span.confirm", input: { spanId: id } }],
    };
  },
};

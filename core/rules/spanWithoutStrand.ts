import { cablesInSpan } from "../plant/cablePath.ts";
import { hungInSpan } from "../plant/hanging.ts";
import { spanName } from "../plant/names.ts";
import { type Rule, routeItself } from "./rule.ts";

export const spanWithoutStrand: Rule = {
  id: "span-without-strand",
  title: "Cables and terminals have strand to hang on",
  compares: "What hangs in a span, cables, terminals, coils and closures, against the strand there.",
  severity: "error",
  basis: routeItself,
  each: "span",
  *check(plant, id) {
    if (plant.rowOf("span", id).strandSectionId !== null) return;
    const hung = hungInSpan(plant, id);
    const cables = cablesInSpan(plant, id);
    if (hung.length === 0 && cables.length === 0) return;
    const what = [...cables.map((one) => `cable ${plant.rowOf("cable", one).name}`), ...hung.map((one) => one.name)];
    yield {
      subjects: [{ table: "span", id }],
      message: `Span ${spanName(plant, id)} has no strand for ${what.join(", ")}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

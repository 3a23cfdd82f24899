import { strungSpans } from "../plant/poleLoad.ts";
import { type Rule, routeItself } from "./rule.ts";

/** Rows do not tell which of several strands on a pole a span hangs on: each is taken to hang on the lowest. */
export const strandOfSpanUnknown: Rule = {
  id: "strand-of-span-unknown",
  title: "A pole carries one strand of ours",
  compares: "How many strands of ours a pole carries, against the one that its spans are taken to hang on.",
  severity: "warning",
  basis: routeItself,
  each: "pole",
  *check(plant, id) {
    const count = plant.whereAll("attachment", { poleId: id, kind: "ourStrand" }).length;
    if (count < 2 || strungSpans(plant, id).length === 0) return;
    yield {
      subjects: [{ table: "pole", id }],
      message: `Pole ${plant.rowOf("pole", id).tag} carries ${count} strands of ours: all its spans are taken to hang on the lowest, and what is near the others in the spans is not checked.`,
      measured: count,
      limit: 1,
      unit: "",
      fixes: [],
    };
  },
};

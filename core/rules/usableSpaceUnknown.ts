import { carriesStrand } from "../plant/separation.ts";
import { type Rule, routeItself } from "./rule.ts";

export const usableSpaceUnknown: Rule = {
  id: "usable-space-unknown",
  title: "The height of every pole with our strand is known",
  compares: "The height of every pole with our strand, against having been measured.",
  severity: "note",
  basis: routeItself,
  each: "pole",
  *check(plant, id) {
    const { tag, aboveGroundM } = plant.rowOf("pole", id);
    if (aboveGroundM !== null || !carriesStrand(plant, id)) return;
    yield {
      subjects: [{ table: "pole", id }],
      message: `How high pole ${tag} stands is unknown: whether there is room for our strand below its top is not checked.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

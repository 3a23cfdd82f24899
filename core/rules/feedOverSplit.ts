import { litFiberCount } from "../plant/feedView.ts";
import { type Rule, routeItself } from "./rule.ts";

export const feedOverSplit: Rule = {
  id: "feed-over-split",
  title: "A hub output lights no more fibers than its hub splitter has legs",
  compares: "How many fibers a hub output lights, against the legs of its hub splitter.",
  severity: "error",
  basis: routeItself,
  each: "feed",
  *check(plant, id) {
    const { name, hubSplitCount } = plant.rowOf("feed", id);
    const lit = litFiberCount(plant, id);
    if (lit <= hubSplitCount) return;
    yield {
      subjects: [{ table: "feed", id }],
      message: `${name} lights more fibers than its hub splitter has legs.`,
      measured: lit,
      limit: hubSplitCount,
      unit: "",
      fixes: [],
    };
  },
};

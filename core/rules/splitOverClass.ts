import { legsOfFiber } from "../plant/feedView.ts";
import { feedOfUse } from "../plant/fiberTrace.ts";
import { feedingUseId } from "../plant/portLight.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";

export const splitOverClass: Rule = {
  id: "split-over-class",
  title: "The light is split no more than its class allows",
  compares:
    "The legs of the hub splitter times those of all splitters on the same fiber, against the largest split of the optical class.",
  severity: "error",
  basis: { ...routeItself, document: "optical class of the feed" },
  each: "splitter",
  *check(plant, id) {
    const useId = feedingUseId(plant, id);
    const feedId = useId === null ? null : feedOfUse(plant, useId);
    if (useId === null || feedId === null) return;
    const { terminalId } = plant.rowOf("splitter", id);
    const feed = plant.rowOf("feed", feedId);
    const light = plant.rowOf("opticalClass", feed.opticalClassId);
    const measured = feed.hubSplitCount * legsOfFiber(plant, useId);
    if (measured <= light.maxSplitCount) return;
    yield {
      subjects: [
        { table: "splitter", id },
        { table: "terminal", id: terminalId },
        { table: "feed", id: feed.id },
      ],
      message: `At terminal ${plant.rowOf("terminal", terminalId).name} the light of ${feed.name} is split more often than ${light.system} ${light.name} allows.`,
      measured,
      limit: light.maxSplitCount,
      unit: "",
      fixes: [],
      basis: catalogueBasis(light),
    };
  },
};

import { type Rule, routeItself } from "./rule.ts";
import { separationHits } from "./separationInSpan.ts";

export const supplySeparationInSpan: Rule = {
  id: "supply-separation-in-span",
  title: "Our strand stays below supply and neutral in the span",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "span",
  check: (plant, id) => separationHits(plant, id, ["supply", "neutral"]),
};

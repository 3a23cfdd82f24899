import { type Rule, routeItself } from "./rule.ts";
import { separationHits } from "./separationInSpan.ts";

export const supplySeparationInSpan: Rule = {
  id: "supply-separation-in-span",
  title: "Our strand stays below supply and neutral in the span",
  compares:
    "The least height along a span of supply or neutral, at the sag assumed for it, over our strand as strung, against the clearance set's limit.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "span",
  check: (plant, id) => separationHits(plant, id, ["supply", "neutral"]),
};

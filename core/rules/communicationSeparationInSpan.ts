import { type Rule, routeItself } from "./rule.ts";
import { separationHits } from "./separationInSpan.ts";

export const communicationSeparationInSpan: Rule = {
  id: "communication-separation-in-span",
  title: "Our strand keeps away from other communication in the span",
  severity: "warning",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "span",
  check: (plant, id) => separationHits(plant, id, ["communication"]),
};

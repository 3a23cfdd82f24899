import { type Rule, routeItself } from "./rule.ts";
import { separationHits } from "./separationInSpan.ts";

export const communicationSeparationInSpan: Rule = {
  id: "communication-separation-in-span",
  title: "Our strand keeps away from other communication in the span",
  compares:
    "The least gap along a span between our strand, at its largest sag where it is the upper one, and another party's communication wire at the sag assumed for it, against the clearance set's limit.",
  severity: "warning",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "span",
  check: (plant, id) => separationHits(plant, id, ["communication"]),
};

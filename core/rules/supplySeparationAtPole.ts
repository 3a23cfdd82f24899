import { poleSeparation, separationLimitFor } from "../plant/separation.ts";
import { kindWords } from "../plant/thingWords.ts";
import { moveIntoRangeFix } from "./attachmentFix.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const supplySeparationAtPole: Rule = {
  id: "supply-separation-at-pole",
  title: "Our strand hangs below supply and neutral at the pole",
  compares: "The height of supply or neutral over our strand on one pole, against the clearance set's limit.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "attachment",
  *check(plant, id) {
    const separation = poleSeparation(plant, id);
    if (separation?.party !== "supply" && separation?.party !== "neutral") return;
    const other = plant.rowOf("attachment", id);
    const { poleId, owner, kind } = other;
    const limit = separationLimitFor(plant, other, "AtPole");
    if (!limit || !isUnder(separation.aboveM, limit.limitM)) return;
    const assumed = separation.ourAttachmentId === null ? ", our height assumed" : "";
    yield {
      subjects: [
        { table: "attachment", id },
        { table: "pole", id: poleId },
      ],
      message: `At pole ${plant.rowOf("pole", poleId).tag} our strand is not far enough below the ${kindWords(kind)} of ${owner || "an unknown owner"}${assumed}.`,
      measured: separation.aboveM,
      limit: limit.limitM,
      unit: "m",
      fixes: moveIntoRangeFix(plant, poleId),
      basis: catalogueBasis(limit),
    };
  },
};

import { clearanceLimitFor } from "../plant/clearance.ts";
import { poleSeparation } from "../plant/separation.ts";
import { moveIntoRangeFix } from "./attachmentFix.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const communicationSeparationAtPole: Rule = {
  id: "communication-separation-at-pole",
  title: "Our strand keeps away from other communication at the pole",
  compares:
    "The height between our strand and another party's communication wire on one pole, against the clearance set's limit.",
  severity: "warning",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "attachment",
  *check(plant, id) {
    const separation = poleSeparation(plant, id);
    if (separation?.party !== "communication") return;
    const limit = clearanceLimitFor(plant, "communicationAtPole");
    const measured = Math.abs(separation.aboveM);
    if (!limit || !isUnder(measured, limit.limitM)) return;
    const { poleId, owner } = plant.rowOf("attachment", id);
    const assumed = separation.ourAttachmentId === null ? ", our height assumed" : "";
    yield {
      subjects: [
        { table: "attachment", id },
        { table: "pole", id: poleId },
      ],
      message: `At pole ${plant.rowOf("pole", poleId).tag} our strand is too close to the communication of ${owner || "an unknown owner"}${assumed}.`,
      measured,
      limit: limit.limitM,
      unit: "m",
      fixes: moveIntoRangeFix(plant, poleId),
      basis: catalogueBasis(limit),
    };
  },
};

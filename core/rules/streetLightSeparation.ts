import { poleSeparation, separationLimitFor } from "../plant/separation.ts";
import { kindWords } from "../plant/thingWords.ts";
import { moveIntoRangeFix } from "./attachmentFix.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

/** A bracket may be above our strand or below it; a drip loop must hang above it. */
export const streetLightSeparation: Rule = {
  id: "street-light-separation",
  title: "Our strand keeps away from street-light brackets and stays under their drip loops",
  compares:
    "The height between our strand and a street-light bracket, or under its drip loop, on one pole, against the clearance set's limit.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "attachment",
  *check(plant, id) {
    const separation = poleSeparation(plant, id);
    if (separation?.party !== "streetLight" && separation?.party !== "dripLoop") return;
    const other = plant.rowOf("attachment", id);
    const limit = separationLimitFor(plant, other, "AtPole");
    const measured = separation.party === "streetLight" ? Math.abs(separation.aboveM) : separation.aboveM;
    if (!limit || !isUnder(measured, limit.limitM)) return;
    const near = separation.party === "streetLight" ? "is too close to" : "is not far enough below";
    const bonded = other.bonded || other.kind === "dripLoop" ? "" : ", which is not told to be grounded";
    const assumed = separation.ourAttachmentId === null ? ", our height assumed" : "";
    yield {
      subjects: [
        { table: "attachment", id },
        { table: "pole", id: other.poleId },
      ],
      message: `At pole ${plant.rowOf("pole", other.poleId).tag} our strand ${near} the ${kindWords(other.kind)} of ${other.owner || "an unknown owner"}${bonded}${assumed}.`,
      measured,
      limit: limit.limitM,
      unit: "m",
      fixes: moveIntoRangeFix(plant, other.poleId),
      basis: catalogueBasis(limit),
    };
  },
};

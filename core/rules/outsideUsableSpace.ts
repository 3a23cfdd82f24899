import type { Plant } from "../plant/plant.ts";
import { moveIntoRangeFix } from "./attachmentFix.ts";
import { companySetting, type Hit, type Rule, routeItself } from "./rule.ts";
import { isOver, isUnder } from "./withinLimit.ts";

export const outsideUsableSpace: Rule = {
  id: "outside-usable-space",
  title: "Attachments stay in the usable space of their pole",
  compares:
    "The height of each attachment on its pole, against the top of the pole, and for our strand against the usable space of the settings.",
  severity: "warning",
  basis: companySetting("usableFromM"),
  each: "attachment",
  *check(plant, id) {
    const { poleId, kind, owner, heightM } = plant.rowOf("attachment", id);
    const { aboveGroundM } = plant.rowOf("pole", poleId);
    const { usableFromM, poleTopGapM } = plant.settings();
    const name = kind === "ourStrand" ? "our strand" : `the ${kind} of ${owner || "an unknown owner"}`;
    if (kind === "ourStrand" && isUnder(heightM, usableFromM)) {
      yield hit(plant, id, `${name} hangs below the usable space`, usableFromM);
      return;
    }
    if (aboveGroundM === null) return;
    if (isOver(heightM, aboveGroundM)) {
      yield { ...hit(plant, id, `${name} is recorded above the top of the pole`, aboveGroundM), basis: routeItself };
      return;
    }
    if (kind !== "ourStrand" || !isOver(heightM, aboveGroundM - poleTopGapM)) return;
    yield hit(plant, id, `${name} comes too near the top of the pole`, aboveGroundM - poleTopGapM);
  },
};

function hit(plant: Plant, id: string, what: string, limit: number): Hit {
  const { poleId, heightM, kind } = plant.rowOf("attachment", id);
  return {
    subjects: [
      { table: "attachment", id },
      { table: "pole", id: poleId },
    ],
    message: `At pole ${plant.rowOf("pole", poleId).tag} ${what}.`,
    measured: heightM,
    limit,
    unit: "m",
    fixes: kind === "ourStrand" ? moveIntoRangeFix(plant, poleId) : [],
  };
}

import { clearanceLimitFor } from "../plant/clearance.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const riserBracketTooLow: Rule = {
  id: "riser-bracket-too-low",
  title: "Nobody can climb a riser by its brackets from the ground",
  compares:
    "The height of a riser's lowest stand-off bracket over the ground, or else of the next one over it, against the clearance set's limit.",
  severity: "warning",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "attachment",
  *check(plant, id) {
    const { kind, poleId, owner, heightM } = plant.rowOf("attachment", id);
    const limit = kind === "riser" ? clearanceLimitFor(plant, "riserBracket") : undefined;
    if (!limit || !isUnder(heightM, limit.limitM)) return;
    const others = plant
      .whereAll("attachment", { poleId, kind: "riser" })
      .map((one) => plant.rowOf("attachment", one))
      .filter((one) => one.id !== id && one.owner === owner);
    const isLowest = others.every((one) => one.heightM > heightM || (one.heightM === heightM && one.id > id));
    const nextM = Math.min(...others.map((one) => one.heightM));
    const isNextFar = others.length > 0 && !isUnder(nextM - heightM, limit.limitM);
    if (!isLowest || isNextFar) return;
    yield {
      subjects: [
        { table: "attachment", id },
        { table: "pole", id: poleId },
      ],
      message: `The lowest riser bracket of ${owner || "an unknown owner"} on pole ${plant.rowOf("pole", poleId).tag} is too near the ground${others.length > 0 ? ", and the next one too near it" : ""}.`,
      measured: heightM,
      limit: limit.limitM,
      unit: "m",
      fixes: [],
      basis: catalogueBasis(limit),
    };
  },
};

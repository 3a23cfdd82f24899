import { clearanceLimitFor } from "../plant/clearance.ts";
import type { Plant } from "../plant/plant.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const ownStrandsTooNear: Rule = {
  id: "own-strands-too-near",
  title: "Strands of ours on one pole keep apart",
  compares:
    "The height between two neighbouring strands of ours on one pole, against what the clearance set asks between messengers of communication.",
  severity: "warning",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "pole",
  *check(plant, id) {
    const limit = clearanceLimitFor(plant, "communicationAtPole");
    const [nearest] = gapsM(plant, id).sort((a, b) => a.gapM - b.gapM);
    if (!limit || !nearest || !isUnder(nearest.gapM, limit.limitM)) return;
    yield {
      subjects: [
        { table: "pole", id },
        { table: "attachment", id: nearest.lowerId },
        { table: "attachment", id: nearest.upperId },
      ],
      message: `At pole ${plant.rowOf("pole", id).tag} two strands of ours are nearer than messengers of communication may be without the agreement of their owners.`,
      measured: nearest.gapM,
      limit: limit.limitM,
      unit: "m",
      fixes: [],
      basis: catalogueBasis(limit),
    };
  },
};

type Gap = { readonly lowerId: string; readonly upperId: string; readonly gapM: number };

/** Heights between neighbouring strands of ours on a pole. */
function gapsM(plant: Plant, poleId: string): Gap[] {
  const upwards = plant
    .whereAll("attachment", { poleId, kind: "ourStrand" })
    .map((id) => plant.rowOf("attachment", id))
    .sort((a, b) => a.heightM - b.heightM);
  return upwards.slice(1).flatMap((upper, at) => {
    const lower = upwards[at];
    return lower ? [{ lowerId: lower.id, upperId: upper.id, gapM: upper.heightM - lower.heightM }] : [];
  });
}

import { clearanceLimitFor } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { structureSurfaces } from "../plant/structureClearance.ts";
import { companySetting, type Rule } from "./rule.ts";

export const structureWithoutLimit: Rule = {
  id: "structure-without-limit",
  title: "The clearance set has limits for every building and sign",
  compares:
    "Every building and sign, against the clearance set having a limit over it, beside it, and under it where the line may pass there.",
  severity: "warning",
  basis: companySetting("clearanceSetId"),
  each: "structure",
  *check(plant, id) {
    const { name, kind, spanId, bottomM } = plant.rowOf("structure", id);
    const surfaces = structureSurfaces(kind);
    const asked = bottomM === null ? (["over", "beside"] as const) : (["over", "beside", "under"] as const);
    const missing = asked.filter((where) => !clearanceLimitFor(plant, surfaces[where]));
    if (missing.length === 0) return;
    const set = plant.rowOf("clearanceSet", plant.settings().clearanceSetId);
    yield {
      subjects: [
        { table: "structure", id },
        { table: "clearanceSet", id: set.id },
      ],
      message: `The clearance set ${set.name} has no limit ${listed(missing)} ${name || "the structure"} in span ${spanName(plant, spanId)}: that is not checked.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

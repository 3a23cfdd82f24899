import { clearanceLimitFor } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { structureSurfaces } from "../plant/structureClearance.ts";
import { companySetting, type Rule } from "./rule.ts";

export const structureWithoutLimit: Rule = {
  id: "structure-without-limit",
  title: "The clearance set has limits for every building and sign",
  compares: "Every building and sign, against the clearance set having a limit over it and beside it.",
  severity: "warning",
  basis: companySetting("clearanceSetId"),
  each: "structure",
  *check(plant, id) {
    const { name, kind, spanId } = plant.rowOf("structure", id);
    const surfaces = structureSurfaces(kind);
    const missing = (["over", "beside"] as const).filter((where) => !clearanceLimitFor(plant, surfaces[where]));
    if (missing.length === 0) return;
    const set = plant.rowOf("clearanceSet", plant.settings().clearanceSetId);
    yield {
      subjects: [
        { table: "structure", id },
        { table: "clearanceSet", id: set.id },
      ],
      message: `The clearance set ${set.name} has no limit ${missing.join(" and ")} ${name || "the structure"} in span ${spanName(plant, spanId)}: that is not checked.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

import { clearanceCases } from "../model/clearanceRows.ts";
import { clearanceLimitFor } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { surfaceWords } from "../plant/thingWords.ts";
import { caseWords } from "./caseWords.ts";
import { companySetting, type Rule } from "./rule.ts";

export const crossingWithoutLimit: Rule = {
  id: "crossing-without-limit",
  title: "The clearance set has a limit for every crossing",
  compares: "The surface of a crossing, against the surfaces the chosen clearance set has limits for.",
  severity: "warning",
  basis: companySetting("clearanceSetId"),
  each: "crossing",
  *check(plant, id) {
    const { name, surface, spanId } = plant.rowOf("crossing", id);
    const missing = clearanceCases.filter((condition) => !clearanceLimitFor(plant, surface, condition));
    if (missing.length === 0) return;
    const set = plant.rowOf("clearanceSet", plant.settings().clearanceSetId);
    yield {
      subjects: [
        { table: "crossing", id },
        { table: "clearanceSet", id: set.id },
      ],
      message: `The clearance set ${set.name} has no limit over a ${surfaceWords(surface)}: ${name || "the crossing"} in span ${spanName(plant, spanId)} is not checked${missing.length === clearanceCases.length ? "" : ` ${missing.map((one) => caseWords(plant, one)).join(" and ")}`}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [],
    };
  },
};

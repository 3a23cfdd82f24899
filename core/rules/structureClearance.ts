import { clearanceLimitFor } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import { structureClearance as clearanceOf, structureSurfaces } from "../plant/structureClearance.ts";
import { moveEndIntoRangeFixes } from "./attachmentFix.ts";
import { clearanceHit } from "./clearanceHit.ts";
import { catalogueBasis, type Rule, routeItself } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

/** Beside a structure the line is taken as hanging straight down: wind that blows it towards the structure is not in it. */
export const structureClearance: Rule = {
  id: "structure-clearance",
  title: "The line passes buildings and signs high enough over them, or far enough beside them",
  compares:
    "The distance of the line beside a building or sign, or else its least height over it in every case, against the limits of the clearance set.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "structure",
  *check(plant, id) {
    const { spanId, name, kind, besideM } = plant.rowOf("structure", id);
    const surfaces = structureSurfaces(kind);
    const beside = clearanceLimitFor(plant, surfaces.beside);
    if (beside && besideM > 0 && !isUnder(besideM, beside.limitM)) return;
    const what = name || "a structure";
    const over = clearanceHit(plant, surfaces.over, clearanceOf(plant, id), {
      place: `Over ${what} in span ${spanName(plant, spanId)}`,
      spanId,
      subjects: [
        { table: "structure", id },
        { table: "span", id: spanId },
      ],
    });
    if (!over) return;
    const fixes = moveEndIntoRangeFixes(plant, spanId);
    if (besideM === 0 || !beside) yield { ...over, fixes };
    else
      yield {
        ...over,
        fixes,
        message: `Beside ${what} in span ${spanName(plant, spanId)} the line passes too near, and not high enough over it.`,
        measured: besideM,
        limit: beside.limitM,
        basis: catalogueBasis(beside),
      };
  },
};

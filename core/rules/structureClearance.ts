import { clearanceLimitFor } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import {
  structureClearance as clearanceOf,
  structureSurfaces,
  undersideClearance,
} from "../plant/structureClearance.ts";
import { moveEndIntoRangeFixes } from "./attachmentFix.ts";
import { clearanceHit } from "./clearanceHit.ts";
import { catalogueBasis, type Hit, type Rule, routeItself } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

/** Beside a structure the line is taken as hanging straight down, as the limits are: what wind does is told by structureSwept. */
export const structureClearance: Rule = {
  id: "structure-clearance",
  title: "The line passes buildings and signs high enough over them, far enough beside them, or low enough under them",
  compares:
    "The distance of the line beside a building or sign, or else its least height over it or depth under it in every case, against the limits of the clearance set.",
  severity: "error",
  basis: { ...routeItself, document: "clearance set of the settings" },
  each: "structure",
  *check(plant, id) {
    const { spanId, name, kind, besideM, bottomM } = plant.rowOf("structure", id);
    const beside = clearanceLimitFor(plant, structureSurfaces(kind).beside);
    if (beside && besideM > 0 && !isUnder(besideM, beside.limitM)) return;
    const hit = overOrUnder(plant, id);
    if (!hit) return;
    const fixes = moveEndIntoRangeFixes(plant, spanId);
    if (besideM === 0 || !beside) yield { ...hit, fixes };
    else
      yield {
        ...hit,
        fixes,
        message: `Beside ${name || "a structure"} in span ${spanName(plant, spanId)} the line passes too near, and not high enough over it${bottomM === null ? "" : " nor low enough under it"}.`,
        measured: besideM,
        limit: beside.limitM,
        basis: catalogueBasis(beside),
      };
  },
};

/** What is wrong over a structure, and under it where the line may pass there: of the two, what lacks less. Null where either is content. */
function overOrUnder(plant: Plant, id: string): Hit | null {
  const { spanId, name, kind } = plant.rowOf("structure", id);
  const surfaces = structureSurfaces(kind);
  const subjects = [
    { table: "structure", id },
    { table: "span", id: spanId },
  ] as const;
  const place = `${name || "a structure"} in span ${spanName(plant, spanId)}`;
  const over = clearanceHit(plant, surfaces.over, clearanceOf(plant, id), { place: `Over ${place}`, spanId, subjects });
  const beneath = undersideClearance(plant, id);
  if (!over || beneath?.kind !== "known" || !clearanceLimitFor(plant, surfaces.under)) return over;
  const under = clearanceHit(plant, surfaces.under, beneath, {
    place: `Under ${place}`,
    spanId,
    subjects,
    too: "high",
  });
  return under && lackingM(over) <= lackingM(under) ? over : under;
}

function lackingM({ measured, limit }: Hit): number {
  return (limit ?? 0) - (measured ?? 0);
}

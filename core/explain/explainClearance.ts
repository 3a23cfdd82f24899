import type { ClearanceCase } from "../model/clearanceRows.ts";
import { crossingClearance, groundClearance } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { structureClearance, structureSurfaces } from "../plant/structureClearance.ts";
import { surfaceWords } from "../plant/thingWords.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { explainLineOver } from "./lineOver.ts";

/** Least height of the line over a crossing in one condition. */
export function explainClearance(
  plant: Plant,
  crossingId: string,
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const { spanId, name, surface, surfaceM } = plant.rowOf("crossing", crossingId);
  const over = {
    title: `Clearance ${caseTitles[part]} over ${name || `the ${surfaceWords(surface)}`}, span ${spanName(plant, spanId)}`,
    clearance: crossingClearance(plant, crossingId),
    where: "over the crossing's whole width",
    row: { table: "crossing", id: crossingId },
  } as const;
  return explainLineOver(plant, { ...over, spanId, part, surface, surfaceM, raisedM: 0 }, units);
}

/** Least height of the line over the open ground of a span in one condition. */
export function explainGroundClearance(
  plant: Plant,
  spanId: string,
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const title = `Clearance ${caseTitles[part]} over the ground, span ${spanName(plant, spanId)}`;
  const clearance = groundClearance(plant, spanId);
  if (clearance === null) return { kind: "unknown", title, why: "Crossings leave no open ground under this span." };
  const surface = plant.settings().groundSurface;
  const where = "over the ground between crossings";
  return explainLineOver(
    plant,
    { title, spanId, part, clearance, surface, where, row: null, surfaceM: null, raisedM: 0 },
    units,
  );
}

/** Least height of the line over the top of a building or sign in one condition. */
export function explainStructureClearance(
  plant: Plant,
  structureId: string,
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const { spanId, name, kind, heightM } = plant.rowOf("structure", structureId);
  const over = {
    title: `Clearance ${caseTitles[part]} over ${name || "a structure"}, span ${spanName(plant, spanId)}`,
    clearance: structureClearance(plant, structureId),
    surface: structureSurfaces(kind).over,
    where: "along all of it",
    row: { table: "structure", id: structureId },
  } as const;
  return explainLineOver(plant, { ...over, spanId, part, surfaceM: null, raisedM: heightM }, units);
}

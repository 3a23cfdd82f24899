import { blowOutM } from "../plant/blowOut.ts";
import { clearanceLimitFor } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { structureSurfaces } from "../plant/structureClearance.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";
import { clearanceLimitTold } from "./limitWords.ts";

/** Level distance of the line, at rest, from a building or sign beside it. */
export function explainBeside(plant: Plant, structureId: string, units: UnitSystem): Explanation {
  const { spanId, name, kind, besideM, offsetM } = plant.rowOf("structure", structureId);
  const limit = clearanceLimitFor(plant, structureSurfaces(kind).beside);
  const swingM = blowOutM(plant, spanId, offsetM);
  const { name: district } = plant.rowOf("loadingDistrict", plant.settings().loadingDistrictId);
  return {
    kind: "known",
    title: `Distance beside ${name || "a structure"}, span ${spanName(plant, spanId)}`,
    words: "Level distance from the line, hanging straight down, to the nearest face.",
    formula: "b",
    inputs: [
      lengthInput(["b", "from the line to its nearest face"], besideM, [units, "height"], ["structure", structureId]),
    ],
    result: { symbol: "B", value: besideM, unit: "m", text: formatLength(besideM, units, "clearance") },
    limit: clearanceLimitTold(limit, units, "Least distance of the clearance set"),
    source: "measured beside the line",
    assumed: [
      swingM === null
        ? "Wind that blows the line towards it is not counted."
        : `Wind is not counted: under the load of ${district} the strand swings out by ${formatLength(swingM, units, "height")} there, and the limit is held against the line at rest.`,
      ...(limit ? [] : ["The clearance set has no limit beside it."]),
    ],
  };
}

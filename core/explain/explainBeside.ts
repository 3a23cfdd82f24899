import { clearanceLimitFor } from "../plant/clearance.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { structureSurfaces } from "../plant/structureClearance.ts";
import { type Sweep, structureSweeps } from "../plant/structureSweep.ts";
import { caseWords } from "../rules/caseWords.ts";
import { isUnder } from "../rules/withinLimit.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import type { Explanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";
import { clearanceLimitTold } from "./limitWords.ts";

/** Level distance of the line, at rest, from a building or sign beside it. */
export function explainBeside(plant: Plant, structureId: string, units: UnitSystem): Explanation {
  const { spanId, name, kind, besideM } = plant.rowOf("structure", structureId);
  const limit = clearanceLimitFor(plant, structureSurfaces(kind).beside);
  const sweeps = structureSweeps(plant, structureId);
  const swingWords = ({ condition, swingM, isOver }: Sweep): string => {
    const reach = isOver === true ? ", over the top of it" : isUnder(besideM, swingM) ? " and strikes it" : "";
    return `Wind: the strand swings out by ${formatLength(swingM, units, "height")} there ${caseWords(plant, condition)}${reach}.`;
  };
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
      "The limit is held against the line at rest: none of the documents at hand tells what must remain in wind.",
      ...(sweeps.length === 0
        ? ["How far wind swings the strand towards it nobody can tell."]
        : sweeps.map(swingWords)),
      ...(limit ? [] : ["The clearance set has no limit beside it."]),
    ],
  };
}

import type { ClearanceCase } from "../model/clearanceRows.ts";
import { clearanceLimitFor } from "../plant/clearance.ts";
import { groundAtM, groundLine } from "../plant/groundLine.ts";
import { lineHeight } from "../plant/lineHeight.ts";
import { spanName } from "../plant/names.ts";
import type { Plant } from "../plant/plant.ts";
import { structureSurfaces, undersideClearance } from "../plant/structureClearance.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";
import { clearanceLimitTold, takenOfClearance } from "./limitWords.ts";

/** Least height of a structure's underside over our strand in one case. */
export function explainUnderside(
  plant: Plant,
  structureId: string,
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const { spanId, name, kind, bottomM } = plant.rowOf("structure", structureId);
  const title = `Clearance ${caseTitles[part]} under ${name || "a structure"}, span ${spanName(plant, spanId)}`;
  const clearance = undersideClearance(plant, structureId);
  const line = lineHeight(plant, spanId);
  const ground = groundLine(plant, spanId);
  if (clearance === null || bottomM === null)
    return { kind: "unknown", title, why: "It stands on the ground: the line cannot pass under it." };
  if (clearance.kind === "unknown") return { kind: "unknown", title, why: clearance.why };
  if (line.kind === "unknown") return { kind: "unknown", title, why: line.why };
  if (ground.kind === "unknown") return { kind: "unknown", title, why: ground.why };
  const atM = clearance.atByCaseM[part];
  const limit = clearanceLimitFor(plant, structureSurfaces(kind).under, part);
  const strandM = line.undersideM(atM, part) + line.underStrandM;
  return {
    kind: "known",
    title,
    words:
      "Ground there and the underside over it, less the elevation of our strand. Taken where it is least along it.",
    formula: "g + u - y",
    inputs: [
      lengthInput(["g", "elevation of the ground there"], groundAtM(ground, atM), [units, "height"], ["span", spanId]),
      lengthInput(["u", "its underside above the ground"], bottomM, [units, "height"], ["structure", structureId]),
      lengthInput(
        ["y", `elevation of our strand there ${caseTitles[part]}`],
        strandM,
        [units, "height"],
        ["span", spanId],
      ),
    ],
    result: {
      symbol: "C",
      value: clearance.byCase[part],
      unit: "m",
      text: formatLength(clearance.byCase[part], units, "clearance"),
    },
    limit: clearanceLimitTold(limit, units),
    source: "difference of two heights at one place",
    assumed: [
      "The coldest day, when the strand is at its highest, is not among the cases.",
      ...takenOfClearance(clearance, limit, "poles"),
    ],
  };
}

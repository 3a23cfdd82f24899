import type { ClearanceCase } from "../model/clearanceRows.ts";
import { clearanceLimitFor, easedBy } from "../plant/clearance.ts";
import { dropClearance, dropPassage, dropSurface } from "../plant/dropClearance.ts";
import type { Plant } from "../plant/plant.ts";
import { surfaceWords } from "../plant/thingWords.ts";
import { formatLength } from "../units/formatLength.ts";
import type { UnitSystem } from "../units/unitSystem.ts";
import { caseTitles } from "./caseTitles.ts";
import type { Explanation, NoExplanation } from "./explanation.ts";
import { lengthInput } from "./inputs.ts";
import { clearanceLimitTold, takenOfClearance } from "./limitWords.ts";

/** Least height of a drop over something it passes, in one case of the line it hangs from. */
export function explainDropClearance(
  plant: Plant,
  [dropId, dropCrossingId]: readonly [dropId: string, dropCrossingId: string],
  part: ClearanceCase,
  units: UnitSystem,
): Explanation | NoExplanation {
  const { livingUnitId, terminalId } = plant.rowOf("drop", dropId);
  const { name, surface, surfaceM } = plant.rowOf("dropCrossing", dropCrossingId);
  const { address } = plant.rowOf("livingUnit", livingUnitId);
  const title = `Clearance ${caseTitles[part]} of the drop to ${address} over ${name || `the ${surfaceWords(surface)}`}`;
  const passage = dropPassage(plant, dropId, dropCrossingId);
  const clearance = dropClearance(plant, dropId, dropCrossingId);
  if (passage.kind === "unknown") return { kind: "unknown", title, why: passage.why };
  if (clearance.kind === "unknown") return { kind: "unknown", title, why: clearance.why };
  const { runM, sagM, hung, over } = passage;
  const atM = clearance.atByCaseM[part];
  const whole = clearanceLimitFor(plant, dropSurface(plant, dropCrossingId), part);
  const limit = whole && easedBy(whole, clearance.easedByCaseM[part]);
  const atUnit = ["livingUnit", livingUnitId] as const;
  return {
    kind: "known",
    title,
    words:
      "Height of the drop on the straight line from the building to the line's underside at the terminal, less the sag of the drop there, less the surface. Taken where it is least over the whole width.",
    formula: "b + (e - b) · x / r - 4 · d · (x / r) · (1 - x / r) - s",
    inputs: [
      lengthInput(
        ["b", "elevation where it is attached to the building"],
        hung.undersideM(0, part),
        [units, "height"],
        atUnit,
      ),
      lengthInput(
        ["e", `elevation of the line at the terminal ${caseTitles[part]}`],
        hung.undersideM(runM, part),
        [units, "height"],
        ["terminal", terminalId],
      ),
      lengthInput(
        ["x", "lowest point over it, from the building"],
        atM,
        [units, "height"],
        ["dropCrossing", dropCrossingId],
      ),
      lengthInput(["r", "distance of the drop in plan"], runM, [units, "drop"], ["drop", dropId]),
      lengthInput(["d", "midspan sag of the drop"], sagM, [units, "sag"], ["settings", plant.settings().id]),
      lengthInput(
        ["s", surfaceM === null ? "elevation of the ground there" : "elevation of the surface"],
        over.heightAtM(atM),
        [units, "height"],
        ["dropCrossing", dropCrossingId],
      ),
    ],
    result: {
      symbol: "C",
      value: clearance.byCase[part],
      unit: "m",
      text: formatLength(clearance.byCase[part], units, "clearance"),
    },
    limit: clearanceLimitTold(limit, units),
    source: "a parabola on its chord; textbook statics",
    assumed: [
      "The drop hangs at the company's sag of a drop in every case; warmth and ice change the line it hangs from alone.",
      ...takenOfClearance(clearance, limit, "ends"),
    ],
  };
}

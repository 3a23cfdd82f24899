import { spanName } from "../plant/names.ts";
import { structureSweeps } from "../plant/structureSweep.ts";
import { caseWords } from "./caseWords.ts";
import { leaningWords, sagLeansOn } from "./leaningWords.ts";
import type { Rule } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const structureSwept: Rule = {
  id: "structure-swept",
  title: "No wind swings the strand against a building or sign beside it",
  compares:
    "How far the strand swings out in the wind of the loading district, and of what extreme weather the settings ask for, against the distance to the face of a building or sign that it does not swing over.",
  severity: "warning",
  basis: {
    document: "trade practice",
    clause: "strand must not strike what stands beside it; no document at hand tells what must remain in wind",
    edition: "",
    mark: "practice",
  },
  each: "structure",
  *check(plant, id) {
    const { spanId, name, besideM } = plant.rowOf("structure", id);
    if (besideM === 0) return;
    const [worst] = structureSweeps(plant, id).filter(
      ({ swingM, isOver }) => isOver !== true && isUnder(besideM, swingM),
    );
    if (!worst) return;
    const { condition, swingM, isOver } = worst;
    const unmeasured = isOver === null ? ", unless it hangs over the top of it, which nobody measured" : "";
    yield {
      subjects: [
        { table: "structure", id },
        { table: "span", id: spanId },
      ],
      message: `In span ${spanName(plant, spanId)} the strand swings against ${name || "a structure"} ${caseWords(plant, condition)}${unmeasured}${leaningWords(sagLeansOn(plant, spanId, [condition]))}.`,
      measured: swingM,
      limit: besideM,
      unit: "m",
      fixes: [],
    };
  },
};

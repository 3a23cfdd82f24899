import { coilOfTerminal } from "../plant/sheathOpening.ts";
import { drawAsBuilt, figureRead } from "./builtReading.ts";
import { drawAsBuiltFix } from "./drawAsBuiltFix.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const builtSlack: Rule = {
  id: "built-slack",
  title: "The coil left at a terminal holds what its opening takes",
  compares:
    "The sheath read in the coil at a terminal, against the access slack of the settings, or against the drawn coil where that is shorter still.",
  severity: "error",
  basis: companySetting("accessSlackM"),
  each: "reading",
  *check(plant, id) {
    const reading = figureRead(plant, id, { kind: "terminal", what: "slack" });
    if (!reading) return;
    const { subjectId: terminalId, value: measured } = reading;
    const coil = coilOfTerminal(plant, terminalId);
    const need = plant.settings().accessSlackM;
    const limit = coil ? Math.min(need, coil.storedM) : need;
    if (!isUnder(measured, limit)) return;
    yield {
      subjects: [
        { table: "reading", id },
        { table: "terminal", id: terminalId },
      ],
      message: `The coil left at terminal ${plant.rowOf("terminal", terminalId).name} is shorter than its opening takes.`,
      measured,
      limit,
      unit: "m",
      fixes: drawAsBuiltFix(plant, id, drawAsBuilt),
    };
  },
};

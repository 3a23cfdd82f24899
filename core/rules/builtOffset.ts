import { whyNotDrawn } from "../closeout/whyNotDrawn.ts";
import { terminalHang } from "../plant/terminalView.ts";
import { drawAsBuilt, figureRead } from "./builtReading.ts";
import { drawAsBuiltFix } from "./drawAsBuiltFix.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const builtOffset: Rule = {
  id: "built-offset",
  title: "A terminal hangs where it was drawn",
  compares:
    "How far the offset read at a terminal is from the drawn one, against the offset tolerance of the settings.",
  severity: "warning",
  basis: companySetting("offsetToleranceM"),
  each: "reading",
  *check(plant, id) {
    const reading = figureRead(plant, id, { kind: "terminal", what: "offset" });
    if (!reading || whyNotDrawn(plant, id)) return;
    const { subjectId: terminalId, value } = reading;
    const { fromPoleM, poleId } = terminalHang(plant, terminalId);
    const measured = Math.abs(value - fromPoleM);
    const limit = plant.settings().offsetToleranceM;
    if (!isOver(measured, limit)) return;
    const { name } = plant.rowOf("terminal", terminalId);
    const side = value > fromPoleM ? "farther from" : "nearer to";
    yield {
      subjects: [
        { table: "reading", id },
        { table: "terminal", id: terminalId },
      ],
      message: `Terminal ${name} was hung ${side} pole ${plant.rowOf("pole", poleId).tag} than drawn.`,
      measured,
      limit,
      unit: "m",
      fixes: drawAsBuiltFix(plant, id, drawAsBuilt),
    };
  },
};

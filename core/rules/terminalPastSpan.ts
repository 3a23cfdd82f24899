import { spanName } from "../plant/names.ts";
import { type Rule, routeItself } from "./rule.ts";
import { moveTerminalFix } from "./terminalFix.ts";
import { isOver } from "./withinLimit.ts";

export const terminalPastSpan: Rule = {
  id: "terminal-past-span",
  title: "Terminal hangs between the two poles of its span",
  compares: "The far end of a terminal along its span, against the length of the span.",
  severity: "error",
  basis: routeItself,
  each: "terminal",
  *check(plant, id) {
    const terminal = plant.rowOf("terminal", id);
    const { lengthM } = plant.rowOf("span", terminal.spanId);
    const halfM = plant.rowOf("terminalModel", terminal.terminalModelId).lengthM / 2;
    const farEndM = terminal.offsetM + halfM;
    if (!isOver(farEndM, lengthM)) return;
    const offsetM = lengthM - plant.settings().standoffM;
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "span", id: terminal.spanId },
      ],
      message: `Terminal ${terminal.name} reaches past the end of span ${spanName(plant, terminal.spanId)}.`,
      measured: farEndM,
      limit: lengthM,
      unit: "m",
      fixes: moveTerminalFix(plant, id, "Move to the standard distance from the far pole", terminal.spanId, offsetM),
    };
  },
};

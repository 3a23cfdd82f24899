import { spanName } from "../plant/names.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const terminalSpanTooShort: Rule = {
  id: "terminal-span-too-short",
  title: "Terminals hang in spans long enough to work in",
  compares: "The length of a span a terminal hangs in, against the shortest span of the settings.",
  severity: "warning",
  basis: companySetting("minSpanM"),
  each: "terminal",
  *check(plant, id) {
    const { name, spanId } = plant.rowOf("terminal", id);
    const { lengthM } = plant.rowOf("span", spanId);
    const limit = plant.settings().minSpanM;
    if (!isUnder(lengthM, limit)) return;
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "span", id: spanId },
      ],
      message: `Terminal ${name} hangs in span ${spanName(plant, spanId)}, which is too short for it.`,
      measured: lengthM,
      limit,
      unit: "m",
      fixes: [],
    };
  },
};

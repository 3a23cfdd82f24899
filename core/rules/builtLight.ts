import { portReading } from "../plant/portReading.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isOver, isUnder } from "./withinLimit.ts";

export const builtLight: Rule = {
  id: "built-light",
  title: "A port shows the light that is expected of it",
  compares:
    "The power read at a port at its class's wavelength, against what that very port should show, with the reading tolerance of the settings.",
  severity: "error",
  basis: companySetting("readingToleranceDb"),
  each: "reading",
  *check(plant, id) {
    const { kind, subjectId, port, what, wavelengthNm, value: measured } = plant.rowOf("reading", id);
    const terminal = plant.row("terminal", subjectId);
    if (kind !== "port" || what !== "power" || measured === null || !terminal) return;
    const expected = portReading(plant, subjectId, port);
    if (expected.kind === "unknown" || !expected.arrives) return;
    if (plant.rowOf("opticalClass", expected.opticalClassId).downNm !== wavelengthNm) return;
    const { readingToleranceDb } = plant.settings();
    const leastDbm = expected.arrives.leastDbm - readingToleranceDb;
    const mostDbm = expected.arrives.mostDbm + readingToleranceDb;
    const isWeak = isUnder(measured, leastDbm);
    if (!isWeak && !isOver(measured, mostDbm)) return;
    yield {
      subjects: [
        { table: "reading", id },
        { table: "terminal", id: subjectId },
      ],
      message: `Port ${port} of terminal ${terminal.name} shows ${isWeak ? "less" : "more"} light than is expected there.`,
      measured,
      limit: isWeak ? leastDbm : mostDbm,
      unit: "dBm",
      fixes: [],
    };
  },
};

import { terminalHang } from "../plant/terminalView.ts";
import { companySetting, type Rule } from "./rule.ts";
import { standardDistanceFix } from "./terminalFix.ts";
import { isOver } from "./withinLimit.ts";

/** Half an inch: what a tape and a strand mark can hold. Common practice, no source. */
const toleranceM = 0.0127;

export const terminalStandoff: Rule = {
  id: "terminal-standoff",
  title: "Terminal hangs at the standard distance from the pole",
  compares:
    "The distance of a terminal from the pole it hangs at, against the terminal offset of the settings, to within half an inch.",
  severity: "warning",
  basis: companySetting("standoffM"),
  each: "terminal",
  *check(plant, id) {
    const terminal = plant.rowOf("terminal", id);
    const limit = plant.settings().standoffM;
    const { fromPoleM, poleId } = terminalHang(plant, id);
    if (!isOver(Math.abs(fromPoleM - limit), toleranceM)) return;
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "pole", id: poleId },
      ],
      message: `Terminal ${terminal.name} does not hang at the standard distance from pole ${plant.rowOf("pole", poleId).tag}.`,
      measured: fromPoleM,
      limit,
      unit: "m",
      fixes: standardDistanceFix(plant, id),
    };
  },
};

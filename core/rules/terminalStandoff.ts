import { terminalHang } from "../plant/terminalView.ts";
import { companySetting, type Rule } from "./rule.ts";

/** Half an inch: what a tape and a strand mark can hold. Common practice, no source. */
const toleranceM = 0.0127;

export const terminalStandoff: Rule = {
  id: "terminal-standoff",
  title: "Terminal hangs at the standard distance from the pole",
  severity: "warning",
  basis: companySetting("standoffM"),
  each: "terminal",
  *check(plant, id) {
    const terminal = plant.rowOf("terminal", id);
    const limit = plant.settings().standoffM;
    const { fromPoleM, atFirstPole, poleId } = terminalHang(plant, id);
    if (Math.abs(fromPoleM - limit) <= toleranceM) return;
    const { lengthM } = plant.rowOf("span", terminal.spanId);
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "pole", id: poleId },
      ],
      message: `Terminal ${terminal.name} does not hang at the standard distance from pole ${plant.rowOf("pole", poleId).tag}.`,
      measured: fromPoleM,
      limit,
      unit: "m",
      fixes: [
        {
          label: "Move to the standard distance",
          command: "terminal.move",
          input: { terminalId: id, spanId: terminal.spanId, offsetM: atFirstPole ? limit : lengthM - limit },
        },
      ],
    };
  },
};

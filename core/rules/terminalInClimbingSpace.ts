import { terminalHang } from "../plant/terminalView.ts";
import { companySetting, type Rule } from "./rule.ts";
import { standardDistanceFix } from "./terminalFix.ts";
import { isUnder } from "./withinLimit.ts";

export const terminalInClimbingSpace: Rule = {
  id: "terminal-in-climbing-space",
  title: "Terminal's near end stays out of the climbing space",
  compares:
    "The distance from the pole's centre line to the near end of a terminal, against the climbing space of the settings.",
  severity: "error",
  basis: companySetting("climbingSpaceM"),
  each: "terminal",
  *check(plant, id) {
    const terminal = plant.rowOf("terminal", id);
    const { climbingSpaceM, standoffM } = plant.settings();
    const { lengthM } = plant.rowOf("terminalModel", terminal.terminalModelId);
    const { fromPoleM, poleId } = terminalHang(plant, id);
    const nearEndM = fromPoleM - lengthM / 2;
    if (!isUnder(nearEndM, climbingSpaceM)) return;
    const mends = !isUnder(standoffM - lengthM / 2, climbingSpaceM);
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "pole", id: poleId },
      ],
      message: `Terminal ${terminal.name} reaches into the climbing space of pole ${plant.rowOf("pole", poleId).tag}.`,
      measured: nearEndM,
      limit: climbingSpaceM,
      unit: "m",
      fixes: mends ? standardDistanceFix(plant, id) : [],
    };
  },
};

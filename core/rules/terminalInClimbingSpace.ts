import { climbingSpace } from "../plant/climbingSpace.ts";
import { terminalHang } from "../plant/terminalView.ts";
import { catalogueBasis, companySetting, type Rule } from "./rule.ts";
import { standardDistanceFix } from "./terminalFix.ts";
import { isUnder } from "./withinLimit.ts";

export const terminalInClimbingSpace: Rule = {
  id: "terminal-in-climbing-space",
  title: "Terminal's near end stays out of the climbing space",
  compares:
    "The distance from the pole's centre line to the near end of a terminal, against the climbing space of the settings, or of the clearance set where that is more.",
  severity: "error",
  basis: companySetting("climbingSpaceM"),
  each: "terminal",
  *check(plant, id) {
    const terminal = plant.rowOf("terminal", id);
    const { standoffM } = plant.settings();
    const { lengthM } = plant.rowOf("terminalModel", terminal.terminalModelId);
    const { fromPoleM, poleId } = terminalHang(plant, id);
    const { spaceM, limit } = climbingSpace(plant, poleId);
    const nearEndM = fromPoleM - lengthM / 2;
    if (!isUnder(nearEndM, spaceM)) return;
    const mends = !isUnder(standoffM - lengthM / 2, spaceM);
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "pole", id: poleId },
      ],
      message: `Terminal ${terminal.name} reaches into the climbing space of pole ${plant.rowOf("pole", poleId).tag}.`,
      measured: nearEndM,
      limit: spaceM,
      unit: "m",
      ...(limit ? { basis: catalogueBasis(limit) } : {}),
      fixes: mends ? standardDistanceFix(plant, id) : [],
    };
  },
};

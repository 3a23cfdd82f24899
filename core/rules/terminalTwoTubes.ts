import { tubeOf, usesOfTerminal } from "../plant/fiberView.ts";
import { type Rule, tradePractice } from "./rule.ts";

export const terminalTwoTubes: Rule = {
  id: "terminal-two-tubes",
  title: "A terminal opens one buffer tube",
  compares: "How many buffer tubes a terminal takes fibers out of, against one.",
  severity: "warning",
  basis: tradePractice("one tube opened at a terminal, the others pass untouched"),
  each: "terminal",
  *check(plant, id) {
    const { name, cableId } = plant.rowOf("terminal", id);
    const uses = usesOfTerminal(plant, id).map((one) => plant.rowOf("fiberUse", one));
    const tubes = [...new Set(uses.map((one) => tubeOf(plant, one.cableId, one.fiber).tube))];
    if (tubes.length < 2) return;
    yield {
      subjects: [
        { table: "terminal", id },
        { table: "cable", id: cableId },
      ],
      message: `Terminal ${name} takes fibers out of more than one tube: ${tubes.join(", ")}.`,
      measured: tubes.length,
      limit: 1,
      unit: "",
      fixes: [],
    };
  },
};

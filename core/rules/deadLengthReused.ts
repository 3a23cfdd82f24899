import { litFiberCount } from "../plant/feedView.ts";
import { rivalUses } from "../plant/fiberTrace.ts";
import { takingsBefore, throughLossDb } from "../plant/taps.ts";
import { otherFiberFix } from "./giveFiberFix.ts";
import { companySetting, type Rule } from "./rule.ts";

export const deadLengthReused: Rule = {
  id: "dead-length-reused",
  title: "Fiber beyond a cut is used again only where the company does so",
  compares:
    "The fiber a terminal takes beyond the tap of another, against what the company does with fiber beyond a cut.",
  severity: "warning",
  basis: companySetting("deadLength"),
  each: "fiberUse",
  *check(plant, id) {
    const use = plant.rowOf("fiberUse", id);
    if (use.terminalId === null || plant.settings().deadLength !== "left") return;
    const tap = takingsBefore(plant, use, rivalUses(plant, use)).find((one) => throughLossDb(plant, one) !== null);
    if (!tap?.terminalId) return;
    const [terminal, before] = [use.terminalId, tap.terminalId].map((one) => plant.rowOf("terminal", one).name);
    // A fiber of its own takes a leg of the hub of its own.
    const hasRoom =
      use.feedId === null || litFiberCount(plant, use.feedId) < plant.rowOf("feed", use.feedId).hubSplitCount;
    yield {
      subjects: [
        { table: "fiberUse", id },
        { table: "fiberUse", id: tap.id },
        { table: "terminal", id: use.terminalId },
      ],
      message: `Terminal ${terminal} is lit over fiber ${use.fiber} of cable ${plant.rowOf("cable", use.cableId).name} beyond the tap of terminal ${before}, and the company leaves such fiber dark.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: hasRoom ? otherFiberFix(plant, use) : [],
    };
  },
};

import { spanName } from "../plant/names.ts";
import { spanSag } from "../plant/spanSag.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const sagBesideNeighbour: Rule = {
  id: "sag-beside-neighbour",
  title: "Our sag matches that of the communication line beside it",
  compares:
    "Our midspan sag as strung, against the measured sag of the communication line beside it and how far the company lets the two differ.",
  severity: "warning",
  basis: companySetting("sagMatchFrac"),
  each: "wireSag",
  *check(plant, id) {
    const { spanId, owner, kind, sagM } = plant.rowOf("wireSag", id);
    const ours = spanSag(plant, spanId);
    if (kind !== "communication" || ours.kind === "unknown") return;
    const difference = ours.stringing.sagM - sagM;
    const limit = plant.settings().sagMatchFrac * sagM;
    if (!isOver(Math.abs(difference), limit)) return;
    yield {
      subjects: [
        { table: "wireSag", id },
        { table: "span", id: spanId },
      ],
      message: `In span ${spanName(plant, spanId)} our strand hangs ${difference > 0 ? "deeper" : "higher"} than the line of ${owner || "an unknown owner"} by more than the company allows.`,
      measured: Math.abs(difference),
      limit,
      unit: "m",
      fixes: [],
    };
  },
};

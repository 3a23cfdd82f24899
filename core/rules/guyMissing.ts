import { freeId } from "../plant/freeId.ts";
import { turnAtPole } from "../plant/poleGuys.ts";
import { strandAtPole } from "../plant/strandHeight.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const guyMissing: Rule = {
  id: "guy-missing",
  title: "Every dead end, and every turn over the limit, is guyed",
  compares:
    "How far the strand turns at a pole without a guy that stands against the pull, against the angle the company allows; a dead end counts as a turn.",
  severity: "warning",
  basis: companySetting("unguyedAngleRad"),
  each: "pole",
  *check(plant, id) {
    const turn = turnAtPole(plant, id);
    const { unguyedAngleRad, strandTypeId } = plant.settings();
    if (!turn || turn.isHeld || !isOver(turn.turnRad, unguyedAngleRad)) return;
    const { heightM } = strandAtPole(plant, id);
    const guy = { guyId: freeId(plant, "guy", `guy-of-${id}`), poleId: id, strandTypeId, heightM, leadM: heightM };
    yield {
      subjects: [{ table: "pole", id }],
      message: `At pole ${plant.rowOf("pole", id).tag} the strand ${turn.isDeadEnd ? "dead-ends" : "turns"} and no guy stands against it.`,
      measured: turn.turnRad,
      limit: unguyedAngleRad,
      unit: "rad",
      fixes: [
        {
          label: "Set a guy against it, as far out as the strand is high",
          command: "guy.add",
          input: { ...guy, directionRad: turn.guyRad, anchorN: null, note: "" },
        },
      ],
    };
  },
};

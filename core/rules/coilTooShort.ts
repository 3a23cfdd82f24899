import { companySetting, type Rule } from "./rule.ts";
import { isUnder } from "./withinLimit.ts";

export const coilTooShort: Rule = {
  id: "coil-too-short",
  title: "An access coil holds what the opening takes",
  compares: "The sheath in the access coils at a terminal, against the access slack of the settings.",
  severity: "error",
  basis: companySetting("accessSlackM"),
  each: "slack",
  *check(plant, id) {
    const { kind, terminalId, storedM } = plant.rowOf("slack", id);
    if (kind !== "access" || terminalId === null) return;
    const limit = plant.settings().accessSlackM;
    const waiting = plant.where("slack", "terminalId", terminalId);
    const measured = waiting.reduce((sum, one) => sum + plant.rowOf("slack", one).storedM, 0);
    if (!isUnder(measured, limit) || waiting[0] !== id) return;
    yield {
      subjects: [
        { table: "slack", id },
        { table: "terminal", id: terminalId },
      ],
      message: `The coil at terminal ${plant.rowOf("terminal", terminalId).name} is shorter than its opening takes.`,
      measured,
      limit,
      unit: "m",
      fixes: [
        {
          label: "Make it the standard coil",
          command: "slack.set",
          input: { slackId: id, storedM: storedM + limit - measured },
        },
      ],
    };
  },
};

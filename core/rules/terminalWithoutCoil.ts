import { freeId } from "../plant/freeId.ts";
import { companySetting, type Rule } from "./rule.ts";

export const terminalWithoutCoil: Rule = {
  id: "terminal-without-coil",
  title: "Slack waits at every terminal for its opening",
  compares: "Each terminal, against the coils of its cable that wait for it: one must.",
  severity: "error",
  basis: companySetting("accessSlackM"),
  each: "terminal",
  *check(plant, id) {
    const { name, cableId, spanId, offsetM } = plant.rowOf("terminal", id);
    const limit = plant.settings().accessSlackM;
    const coils = plant.where("slack", "terminalId", id).map((one) => plant.rowOf("slack", one));
    if (coils.some((one) => one.cableId === cableId)) return;
    yield {
      subjects: [{ table: "terminal", id }],
      message: `No coil waits at terminal ${name} for its opening.`,
      measured: 0,
      limit,
      unit: "m",
      fixes: [
        {
          label: "Leave the standard coil there",
          command: "slack.add",
          input: {
            slackId: freeId(plant, "slack", `${id}-coil`),
            cableId,
            spanId,
            offsetM,
            storedM: limit,
            kind: "access",
            terminalId: id,
          },
        },
      ],
    };
  },
};

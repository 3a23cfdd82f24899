import { spanName } from "../plant/names.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const coilAwayFromTerminal: Rule = {
  id: "coil-away-from-terminal",
  title: "An access coil hangs at its terminal",
  compares:
    "The distance along the strand from an access coil to the terminal it waits for, against the sheath opening.",
  severity: "warning",
  basis: companySetting("openingM"),
  each: "slack",
  *check(plant, id) {
    const { kind, terminalId, spanId, offsetM } = plant.rowOf("slack", id);
    if (kind !== "access" || terminalId === null) return;
    const terminal = plant.rowOf("terminal", terminalId);
    const limit = plant.settings().openingM;
    const sameSpan = spanId === terminal.spanId;
    const measured = sameSpan ? Math.abs(offsetM - terminal.offsetM) : null;
    if (measured !== null && !isOver(measured, limit)) return;
    const where = sameSpan ? "too far along the span" : `in another span, ${spanName(plant, spanId)}`;
    yield {
      subjects: [
        { table: "slack", id },
        { table: "terminal", id: terminalId },
      ],
      message: `The coil for terminal ${terminal.name} hangs ${where}.`,
      measured,
      limit: measured === null ? null : limit,
      unit: "m",
      fixes: [
        {
          label: "Move the coil to its terminal",
          command: "slack.move",
          input: { slackId: id, spanId: terminal.spanId, offsetM: terminal.offsetM },
        },
      ],
    };
  },
};

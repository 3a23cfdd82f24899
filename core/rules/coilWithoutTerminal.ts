import { spanName } from "../plant/names.ts";
import { type Rule, routeItself } from "./rule.ts";

export const coilWithoutTerminal: Rule = {
  id: "coil-without-terminal",
  title: "Every access coil has a terminal that takes it",
  compares: "The terminal an access coil names, against the terminals that are there.",
  severity: "warning",
  basis: routeItself,
  each: "slack",
  *check(plant, id) {
    const { kind, terminalId, spanId, cableId } = plant.rowOf("slack", id);
    if (kind !== "access" || (terminalId !== null && plant.row("terminal", terminalId))) return;
    yield {
      subjects: [{ table: "slack", id }],
      message: `An access coil of cable ${plant.rowOf("cable", cableId).name} in span ${spanName(plant, spanId)} waits for no terminal.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [{ label: "Take the coil away", command: "slack.remove", input: { slackId: id } }],
    };
  },
};

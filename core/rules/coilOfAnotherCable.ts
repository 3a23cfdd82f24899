import { type Rule, routeItself } from "./rule.ts";

export const coilOfAnotherCable: Rule = {
  id: "coil-of-another-cable",
  title: "The coil at a terminal is of the cable it opens",
  compares: "The cable a coil is of, against the cable that its terminal opens.",
  severity: "error",
  basis: routeItself,
  each: "slack",
  *check(plant, id) {
    const { cableId, terminalId } = plant.rowOf("slack", id);
    if (terminalId === null) return;
    const terminal = plant.rowOf("terminal", terminalId);
    if (terminal.cableId === cableId) return;
    const names = [cableId, terminal.cableId].map((one) => plant.rowOf("cable", one).name);
    yield {
      subjects: [
        { table: "slack", id },
        { table: "terminal", id: terminalId },
      ],
      message: `The coil at terminal ${terminal.name} is of cable ${names[0]}, but the terminal opens cable ${names[1]}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: [{ label: "Take the coil away", command: "slack.remove", input: { slackId: id } }],
    };
  },
};

import { dropRunM } from "../plant/dropView.ts";
import { nearestSparePort } from "./portFix.ts";
import { companySetting, type Rule } from "./rule.ts";
import { isOver } from "./withinLimit.ts";

export const dropOverReach: Rule = {
  id: "drop-over-reach",
  title: "A drop is no longer than its reach",
  compares: "The straight way from a port to its living unit, against the drop reach of the settings.",
  severity: "warning",
  basis: companySetting("dropReachM"),
  each: "drop",
  *check(plant, id) {
    const measured = dropRunM(plant, id);
    const limit = plant.settings().dropReachM;
    if (!isOver(measured, limit)) return;
    const { terminalId, livingUnitId } = plant.rowOf("drop", id);
    const unit = plant.rowOf("livingUnit", livingUnitId);
    const nearer = nearestSparePort(plant, unit);
    yield {
      subjects: [
        { table: "drop", id },
        { table: "livingUnit", id: livingUnitId },
        { table: "terminal", id: terminalId },
      ],
      message: `The drop from terminal ${plant.rowOf("terminal", terminalId).name} to ${unit.address} is too long.`,
      measured,
      limit,
      unit: "m",
      fixes: nearer
        ? [
            {
              label: `Move to port ${nearer.port} of terminal ${nearer.name}`,
              command: "drop.move",
              input: { dropId: id, terminalId: nearer.terminalId, port: nearer.port },
            },
          ]
        : [],
    };
  },
};

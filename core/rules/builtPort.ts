import { drawAsBuilt, figureRead } from "./builtReading.ts";
import { freePortFix } from "./freePortFix.ts";
import { type Rule, routeItself } from "./rule.ts";

export const builtPort: Rule = {
  id: "built-port",
  title: "A drop is plugged into its own port",
  compares: "The port a drop was found in, against the port it was drawn on.",
  severity: "error",
  basis: routeItself,
  each: "reading",
  *check(plant, id) {
    const reading = figureRead(plant, id, { kind: "drop", what: "portOfDrop" });
    if (!reading) return;
    const { subjectId: dropId, value: measured } = reading;
    const { terminalId, port: limit, livingUnitId } = plant.rowOf("drop", dropId);
    if (measured === limit) return;
    yield {
      subjects: [
        { table: "reading", id },
        { table: "terminal", id: terminalId },
        { table: "livingUnit", id: livingUnitId },
      ],
      message: `The drop of ${plant.rowOf("livingUnit", livingUnitId).address} is in port ${measured} of terminal ${plant.rowOf("terminal", terminalId).name}; it was drawn on port ${limit}.`,
      measured: null,
      limit: null,
      unit: "",
      fixes: freePortFix(plant, dropId, { terminalId, port: measured }, drawAsBuilt),
    };
  },
};

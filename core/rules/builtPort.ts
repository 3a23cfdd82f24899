import { portRing } from "../closeout/portRing.ts";
import type { Plant } from "../plant/plant.ts";
import { drawAllAsBuilt, drawAsBuilt, figureRead } from "./builtReading.ts";
import { freePortFix } from "./freePortFix.ts";
import { type Fix, type Rule, routeItself } from "./rule.ts";

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
      fixes: [...freePortFix(plant, dropId, { terminalId, port: measured }, drawAsBuilt), ...ringFix(plant, dropId)],
    };
  },
};

/** Drops in each other's ports move together: one alone would find its port taken. */
function ringFix(plant: Plant, dropId: string): readonly Fix[] {
  const plugs = portRing(plant, dropId);
  return plugs.length === 0 ? [] : [{ label: drawAllAsBuilt(plugs.length), command: "drops.plug", input: { plugs } }];
}

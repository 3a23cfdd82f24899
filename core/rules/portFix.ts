import type { Drop, LivingUnit } from "../model/tables.ts";
import { forbiddenOver } from "../plant/dropPassing.ts";
import { terminalsNear } from "../plant/near.ts";
import type { Plant } from "../plant/plant.ts";
import { spareLitPorts } from "../plant/portLight.ts";
import { terminalHang } from "../plant/terminalView.ts";
import type { Fix } from "./rule.ts";

/** A drop to a spare port with light of its own terminal. */
export function otherPortFix(plant: Plant, drop: Drop): readonly Fix[] {
  const port = spareLitPorts(plant, drop.terminalId)[0];
  if (port === undefined) return [];
  return [
    {
      label: `Move to port ${port}`,
      command: "drop.move",
      input: { dropId: drop.id, terminalId: drop.terminalId, port },
    },
  ];
}

/** The nearest terminal within drop reach of a living unit that has a spare port with light and a way a drop may go, and that port. */
export function nearestSparePort(
  plant: Plant,
  unit: LivingUnit,
): { readonly terminalId: string; readonly name: string; readonly port: number } | null {
  for (const { id } of terminalsNear(plant, unit, plant.settings().dropReachM)) {
    const port = spareLitPorts(plant, id)[0];
    if (port !== undefined && !forbiddenOver(plant, terminalHang(plant, id), unit))
      return { terminalId: id, name: plant.rowOf("terminal", id).name, port };
  }
  return null;
}

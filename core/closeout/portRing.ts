import type { Plant } from "../plant/plant.ts";
import { builtRow } from "./builtPlant.ts";

type Plug = { readonly dropId: string; readonly port: number };

/**
 * The drops of a terminal that were found in each other's ports, round from one of them, each with the port it was found in: two that are
 * swapped, or more. Empty where the round does not close, or where other drops are drawn or were found in its ports.
 */
export function portRing(plant: Plant, dropId: string): readonly Plug[] {
  const { terminalId } = plant.rowOf("drop", dropId);
  const drops = plant.where("drop", "terminalId", terminalId).map((id) => plant.rowOf("drop", id));
  const ring: Plug[] = [];
  let at = dropId;
  for (let left = drops.length; left > 0; left -= 1) {
    const port = builtRow(plant, "drop", at)?.port;
    const [holder, ...others] = drops.filter((one) => one.port === port);
    if (port === undefined || !holder || others.length > 0) return [];
    ring.push({ dropId: at, port });
    if (holder.id === dropId) return ring.length > 1 ? ring : [];
    at = holder.id;
  }
  return [];
}

import type { RowChange } from "../model/rowChange.ts";
import type { Terminal } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/** The edit that hangs a terminal elsewhere on its cable; its coil goes along, and the reason for the old place goes. */
export function movedTerminalRows(plant: Plant, before: Terminal, spanId: string, offsetM: number): RowChange[] {
  const after = { ...before, spanId, offsetM, reason: "" };
  const rows: RowChange[] = [{ table: "terminal", id: before.id, before, after }];
  for (const id of plant.where("slack", "terminalId", before.id)) {
    const coil = plant.rowOf("slack", id);
    rows.push({ table: "slack", id, before: coil, after: { ...coil, spanId, offsetM } });
  }
  return rows;
}

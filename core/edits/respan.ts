import type { RowChange } from "../model/rowChange.ts";
import type { Plant } from "../plant/plant.ts";
import { rowEdit } from "./tableRow.ts";

/**
 * The edit that gives a span another length, with what it carries.
 *
 * Terminals, coils and closures keep their distance from the nearer pole, crossings, ground and structures their share of the span.
 *
 * @param lengthM  horizontal, m
 * @returns null where the span would be too short to hold them
 */
export function respannedRows(plant: Plant, spanId: string, lengthM: number): RowChange[] | null {
  const span = plant.rowOf("span", spanId);
  if (!(lengthM > 0)) return null;
  if (lengthM === span.lengthM) return [];
  const carried = (offsetM: number) => (offsetM <= span.lengthM / 2 ? offsetM : lengthM - (span.lengthM - offsetM));
  const rows: RowChange[] = [{ table: "span", id: spanId, before: span, after: { ...span, lengthM } }];
  const offsetsM: number[] = [];
  for (const table of ["terminal", "slack", "closure"] as const) {
    for (const id of plant.where(table, "spanId", spanId)) {
      const before = plant.rowOf(table, id);
      const offsetM = carried(before.offsetM);
      offsetsM.push(offsetM);
      rows.push(rowEdit(table, before, { ...before, offsetM }));
    }
  }
  for (const table of ["crossing", "groundPoint", "structure"] as const) {
    for (const id of plant.where(table, "spanId", spanId)) {
      const before = plant.rowOf(table, id);
      rows.push(rowEdit(table, before, { ...before, offsetM: (before.offsetM / span.lengthM) * lengthM }));
    }
  }
  return offsetsM.every((offsetM) => offsetM > 0 && offsetM < lengthM) ? rows : null;
}

import type { ImportKind } from "./importOptions.ts";
import type { Table } from "./table.ts";

/** Property of our own GeoJSON and KML that says which table a row comes from. */
export const layerHeading = "route_table";

/** Of a file that holds several tables of a route, as our own GeoJSON and KML do, only the rows of the kind that is brought in. */
export function exportedRows(
  table: Table,
  kind: ImportKind,
): { readonly table: Table; readonly notes: readonly string[] } {
  const column = table.headings.indexOf(layerHeading);
  const layer = kind === "spanPair" ? "span" : kind;
  const rows = table.rows.filter((row) => row.cells[column] === layer);
  if (column < 0 || rows.length === 0 || rows.length === table.rows.length) return { table, notes: [] };
  const notes = [`${table.rows.length - rows.length} ${table.lineWord}s of other tables in the file are passed over.`];
  return { table: { ...table, rows }, notes };
}

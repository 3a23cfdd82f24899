import { type TableName, tableNames } from "../../core/model/tables.ts";

/** A row of the route as the window names it: `table/id`, one text so that sets and comparisons are plain. */
export type RefKey = `${TableName}/${string}`;

/** The name of a row. */
export function refKey(table: TableName, id: string): RefKey {
  return `${table}/${id}`;
}

/** Table and id of a named row. */
export function splitRef(ref: RefKey): { readonly table: TableName; readonly id: string } {
  const cut = ref.indexOf("/");
  const table = tableNames.find((name) => name === ref.slice(0, cut));
  if (!table) throw new Error(`not the name of a row: ${ref}`);
  return { table, id: ref.slice(cut + 1) };
}

/** The name of a row that may not be there, as a list of one or none. */
export function refsOf(table: TableName, id: string | undefined): RefKey[] {
  return id === undefined ? [] : [refKey(table, id)];
}

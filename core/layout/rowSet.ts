import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { type Row, type TableName, tableNames } from "../model/tables.ts";

const rank = new Map<TableName, number>(tableNames.map((name, index) => [name, index]));

/** Rows in an order that never breaks a reference: what is added or changed from the catalogue down, then what goes, backwards. */
export function inWriteOrder(rows: readonly RowChange[]): RowChange[] {
  const rankOf = (row: RowChange) => rank.get(row.table) ?? 0;
  const written = rows.filter((row) => row.after !== null).sort((a, b) => rankOf(a) - rankOf(b));
  const gone = rows.filter((row) => row.after === null).sort((a, b) => rankOf(b) - rankOf(a));
  return [...written, ...gone];
}

/** The edits that turn some present rows of a table into the wanted ones; rows that are already so give none. */
export function rowDifferences<T extends TableName>(
  table: T,
  present: readonly Row<T>[],
  wanted: readonly Row<T>[],
): RowChange[] {
  const before = new Map(present.map((row) => [row.id, row]));
  const kept = new Set(wanted.map((row) => row.id));
  const gone = present.filter((row) => !kept.has(row.id)).map((row) => edit(table, row.id, row, null));
  const written = wanted
    .filter((row) => !holdsSame(before.get(row.id), row))
    .map((row) => edit(table, row.id, before.get(row.id) ?? null, row));
  return [...gone, ...written];
}

/** The route with these rows written, unchecked: for looking ahead while an edit is being worked out. */
export function routeWith(route: Route, rows: readonly RowChange[]): Route {
  const touched = new Map<TableName, Map<string, Row<TableName>>>();
  for (const row of rows) {
    const table = touched.get(row.table) ?? new Map<string, Row<TableName>>(route[row.table]);
    touched.set(row.table, table);
    if (row.after === null) table.delete(row.id);
    else table.set(row.id, row.after);
  }
  return { ...route, ...Object.fromEntries(touched) };
}

function holdsSame(a: object | undefined, b: object): boolean {
  return a !== undefined && Object.entries(b).every(([key, value]) => Reflect.get(a, key) === value);
}

function edit<T extends TableName>(table: T, id: string, before: Row<T> | null, after: Row<T> | null): RowChange {
  return { table, id, before, after } as RowChange; // table and rows share one type parameter
}

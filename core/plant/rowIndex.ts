import type { Route } from "../model/route.ts";
import type { TableName } from "../model/tables.ts";

type Bucket = Set<string>;
type ByValue = Map<string, Bucket>;

/** Rows found by the value of one column, kept up to date row by row. Built the first time a column is asked for. */
export type RowIndex = {
  /** Ids of the rows whose column has this value, sorted. */
  readonly find: (route: Route, table: TableName, column: string, value: string) => readonly string[];
  /** Takes in one row's edit; answers with the names of the buckets that changed. */
  readonly move: (table: TableName, id: string, before: object | null, after: object | null) => string[];
};

/** Name of one bucket, for tracking. */
export function bucketKey(table: TableName, column: string, value: string): string {
  return `where/${table}/${column}/${value}`;
}

/** An index with no columns yet. */
export function openRowIndex(): RowIndex {
  const columns = new Map<string, ByValue>();

  const put = (byValue: ByValue, value: string, id: string): void => {
    const bucket = byValue.get(value);
    if (bucket) bucket.add(id);
    else byValue.set(value, new Set([id]));
  };

  return {
    find(route, table, column, value) {
      const name = `${table}/${column}`;
      let byValue = columns.get(name);
      if (!byValue) {
        byValue = new Map();
        for (const row of route[table].values()) put(byValue, columnText(row, column), row.id);
        columns.set(name, byValue);
      }
      return [...(byValue.get(value) ?? [])].sort();
    },
    move(table, id, before, after) {
      const changed: string[] = [];
      for (const [name, byValue] of columns) {
        const [owner, column] = name.split("/");
        if (owner !== table || column === undefined) continue;
        const from = before === null ? null : columnText(before, column);
        const to = after === null ? null : columnText(after, column);
        if (from === to) continue;
        if (from !== null) byValue.get(from)?.delete(id);
        if (to !== null) put(byValue, to, id);
        for (const value of [from, to]) if (value !== null) changed.push(bucketKey(table, column, value));
      }
      return changed;
    },
  };
}

function columnText(row: object, column: string): string {
  const value: unknown = Reflect.get(row, column);
  return value === null || value === undefined ? "" : String(value);
}

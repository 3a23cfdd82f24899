import type { Route } from "../model/route.ts";
import type { TableName } from "../model/tables.ts";
import type { CellName } from "./memo.ts";
import { cellColumn, cellOf } from "./spatialGrid.ts";

type Bucket = Set<string>;
type ByValue = Map<string, Bucket>;

/** Rows of one table by the values of some columns. */
export type TableIndex = {
  /** Name of its buckets' kind, for tracking. */
  readonly space: string;
  readonly columns: readonly string[];
  readonly byValue: ByValue;
};

/**
 * Rows found by the values of some columns, kept up to date row by row. Built the first time those columns are asked
 * for.
 */
export type RowIndex = {
  /** The index of a table by these columns. */
  readonly by: (route: Route, table: TableName, columns: readonly string[]) => TableIndex;
  /** Takes in one row's edit; answers with the names of the buckets that changed. */
  readonly move: (table: TableName, id: string, before: object | null, after: object | null) => CellName[];
};

/** An index with no columns yet. */
export function openRowIndex(): RowIndex {
  const tables = new Map<TableName, Map<string, TableIndex>>();
  return {
    by(route, table, columns) {
      let indexes = tables.get(table);
      if (!indexes) {
        indexes = new Map();
        tables.set(table, indexes);
      }
      const name = columns.length === 1 ? (columns[0] ?? "") : columns.join(",");
      let index = indexes.get(name);
      if (!index) {
        index = { space: `where/${table}/${name}`, columns, byValue: new Map() };
        for (const row of route[table].values()) put(index.byValue, rowText(row, columns), row.id);
        indexes.set(name, index);
      }
      return index;
    },
    move(table, id, before, after) {
      const changed: CellName[] = [];
      for (const { space, columns, byValue } of tables.get(table)?.values() ?? []) {
        const from = before === null ? null : rowText(before, columns);
        const to = after === null ? null : rowText(after, columns);
        if (from === to) continue;
        if (from !== null) byValue.get(from)?.delete(id);
        if (to !== null) put(byValue, to, id);
        for (const value of [from, to]) if (value !== null) changed.push([space, value]);
      }
      return changed;
    },
  };
}

/** Ids of the rows in one bucket of an index, sorted. */
export function bucketIds(index: TableIndex, value: string): readonly string[] {
  const bucket = index.byValue.get(value);
  return bucket ? [...bucket].sort() : [];
}

/** Several values as one text that no other values can give. */
export function valueText(values: readonly string[]): string {
  return values.length === 1 ? (values[0] ?? "") : JSON.stringify(values);
}

function put(byValue: ByValue, value: string, id: string): void {
  const bucket = byValue.get(value);
  if (bucket) bucket.add(id);
  else byValue.set(value, new Set([id]));
}

function rowText(row: object, columns: readonly string[]): string {
  return valueText(columns.map((column) => columnText(row, column)));
}

function columnText(row: object, column: string): string {
  if (column === cellColumn) return cellOf({ eastM: numberOf(row, "eastM"), northM: numberOf(row, "northM") });
  const value: unknown = Reflect.get(row, column);
  return value === null || value === undefined ? "" : String(value);
}

function numberOf(row: object, column: string): number {
  const value: unknown = Reflect.get(row, column);
  if (typeof value !== "number") throw new Error(`a row without ${column} has no place on the grid`);
  return value;
}

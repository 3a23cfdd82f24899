import { type Route, settingsId } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Row, Settings, TableName } from "../model/tables.ts";
import { openMemo } from "./memo.ts";
import { bucketKey, openRowIndex } from "./rowIndex.ts";

/**
 * A route seen through tracked reads. Everything derived from rows (stations, cable lengths, sags, findings) is asked here,
 * computed once, and dropped again only when a row it read has changed.
 */
export type Plant = {
  /** The rows as they stand. Reading them here is not tracked: for whole-route work such as drawing and layout only. */
  readonly route: () => Route;
  readonly settings: () => Settings;
  /** A row by id, or undefined where there is none. */
  readonly row: <T extends TableName>(table: T, id: string) => Row<T> | undefined;
  /** A row that a reference promises; the file's foreign keys keep that promise. */
  readonly rowOf: <T extends TableName>(table: T, id: string) => Row<T>;
  /** Ids of the rows whose column has this value ("" for null), sorted. */
  readonly where: <T extends TableName>(table: T, column: keyof Row<T> & string, value: string) => readonly string[];
  /** Ids of all rows of a table, sorted. Whatever reads this is recomputed whenever the table gains or loses a row. */
  readonly all: (table: TableName) => readonly string[];
  /** A derived figure by name and key; use defineQuery rather than calling this. */
  readonly derive: <T>(name: string, key: string, compute: () => T) => T;
  /** Takes in an edit; answers with the names of the derived figures that went stale (`name/key`). */
  readonly advance: (route: Route, rows: readonly RowChange[]) => string[];
};

/** A route under tracking. */
export function openPlant(initial: Route): Plant {
  let route = initial;
  const memo = openMemo();
  const index = openRowIndex();

  const row = <T extends TableName>(table: T, id: string): Row<T> | undefined => {
    memo.touch(`row/${table}/${id}`);
    return route[table].get(id);
  };
  const rowOf = <T extends TableName>(table: T, id: string): Row<T> => {
    const found = row(table, id);
    if (!found) throw new Error(`a reference leads nowhere: ${table} ${id}`);
    return found;
  };

  return {
    route: () => route,
    settings: () => rowOf("settings", settingsId),
    row,
    rowOf,
    where(table, column, value) {
      memo.touch(bucketKey(table, column, value));
      return index.find(route, table, column, value);
    },
    all(table) {
      memo.touch(`all/${table}`);
      return [...route[table].keys()].sort();
    },
    derive: (name, key, compute) => memo.get(`${name}/${key}`, compute),
    advance(next, rows) {
      route = next;
      const inputs: string[] = [];
      for (const { table, id, before, after } of rows) {
        inputs.push(`row/${table}/${id}`, ...index.move(table, id, before, after));
        if (before === null || after === null) inputs.push(`all/${table}`);
      }
      return memo.stale(inputs);
    },
  };
}

/** A derived figure: asked by key, remembered, recomputed only when a row it read has changed. */
export type Query<T> = (plant: Plant, key: string) => T;

/**
 * Names a derived figure.
 *
 * @param name  unique among all queries
 * @param compute  reads through the plant only; must be a pure function of what it reads
 */
export function defineQuery<T>(name: string, compute: (plant: Plant, key: string) => T): Query<T> {
  return (plant, key) => plant.derive(name, key, () => compute(plant, key));
}

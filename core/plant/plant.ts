import { type Route, settingsId } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { type Row, type Settings, type TableName, tableNames } from "../model/tables.ts";
import type { Point } from "./geometry.ts";
import { type CellName, openMemo } from "./memo.ts";
import { bucketIds, openRowIndex, valueText } from "./rowIndex.ts";
import { cellColumn, cellsAround } from "./spatialGrid.ts";

/** Tables whose rows have a place of their own. */
type PlacedTable = "pole" | "livingUnit";

/**
 * A route seen through tracked reads. Everything derived from rows (stations, cable lengths, sags, findings) is asked
 * here, computed once, and dropped again only when a row it read has changed.
 */
export type Plant = {
  /** The rows as they stand. Reading them here is not tracked: for whole-route work such as drawing and layout only. */
  readonly route: () => Route;
  /** The standards of the route, tracked value by value: a new reach leaves what never read the reach as it is. */
  readonly settings: () => Settings;
  /** A row by id, or undefined where there is none. */
  readonly row: <T extends TableName>(table: T, id: string) => Row<T> | undefined;
  /** A row that a reference promises; the file's foreign keys keep that promise. */
  readonly rowOf: <T extends TableName>(table: T, id: string) => Row<T>;
  /** Ids of the rows whose column has this value ("" for null), sorted. */
  readonly where: <T extends TableName>(table: T, column: keyof Row<T> & string, value: string) => readonly string[];
  /** Ids of the rows whose columns all have these values ("" for null), sorted. */
  readonly whereAll: <T extends TableName, C extends keyof Row<T> & string>(
    table: T,
    wanted: Readonly<Record<C, string>>,
  ) => readonly string[];
  /** Ids of the rows within a distance of a point, sorted. Looks into the squares around it only. */
  readonly near: (table: PlacedTable, point: Point, radiusM: number) => readonly string[];
  /** Ids of all rows of a table, sorted. Whatever reads this is recomputed whenever the table gains or loses a row. */
  readonly all: (table: TableName) => readonly string[];
  /** A derived figure by name and key; use defineQuery rather than calling this. */
  readonly derive: <T>(name: string, key: string, compute: () => T, steady?: boolean) => T;
  /** Takes in an edit; answers with the names of the derived figures that went stale (`name/key`). */
  readonly advance: (route: Route, rows: readonly RowChange[]) => string[];
};

/** Kinds of the inputs: the rows of each table, and the ids of a whole table. */
const rowsOf = Object.fromEntries(tableNames.map((name) => [name, `row/${name}`])) as Record<TableName, string>; // fromEntries cannot keep the keys' type
const allRows = "all rows";
const settingValue = "setting";

/** A route under tracking. */
export function openPlant(initial: Route): Plant {
  let route = initial;
  const memo = openMemo();
  const index = openRowIndex();

  const row = <T extends TableName>(table: T, id: string): Row<T> | undefined => {
    memo.touch(rowsOf[table], id);
    return route[table].get(id);
  };
  const rowOf = <T extends TableName>(table: T, id: string): Row<T> => {
    const found = row(table, id);
    if (!found) throw new Error(`a reference leads nowhere: ${table} ${id}`);
    return found;
  };

  let settingsSeen: { readonly row: Settings; readonly tracked: Settings } | null = null;
  const settings = (): Settings => {
    const present = route.settings.get(settingsId);
    if (!present) return rowOf("settings", settingsId);
    if (settingsSeen?.row !== present) settingsSeen = { row: present, tracked: trackedValues(present) };
    return settingsSeen.tracked;
  };
  const trackedValues = (row: Settings): Settings =>
    new Proxy(row, {
      get(target, column) {
        if (typeof column === "string") memo.touch(settingValue, column);
        return Reflect.get(target, column);
      },
    });

  const find = (table: TableName, columns: readonly string[], value: string): readonly string[] => {
    const bucket = index.by(route, table, columns);
    memo.touch(bucket.space, value);
    return bucketIds(bucket, value);
  };

  return {
    route: () => route,
    settings,
    row,
    rowOf,
    where: (table, column, value) => find(table, [column], value),
    whereAll: (table, wanted) => find(table, Object.keys(wanted), valueText(Object.values(wanted))),
    near(table, point, radiusM) {
      const ids = cellsAround(point, radiusM).flatMap((cell) => find(table, [cellColumn], cell));
      return ids
        .filter((id) => {
          const { eastM, northM } = rowOf(table, id);
          return Math.hypot(eastM - point.eastM, northM - point.northM) <= radiusM;
        })
        .sort();
    },
    all(table) {
      memo.touch(allRows, table);
      return [...route[table].keys()].sort();
    },
    derive: (name, key, compute, steady) => memo.get(name, key, compute, steady),
    advance(next, rows) {
      route = next;
      const inputs: CellName[] = [];
      for (const { table, id, before, after } of rows) {
        inputs.push([rowsOf[table], id], ...index.move(table, id, before, after));
        if (before === null || after === null) inputs.push([allRows, table]);
        if (table === "settings")
          for (const column of changedColumns(before, after)) inputs.push([settingValue, column]);
      }
      return memo.stale(inputs).map(([name, key]) => `${name}/${key}`);
    },
  };
}

/** Columns of a row that an edit gave another value; all of them where the row came or went. */
function changedColumns(before: object | null, after: object | null): readonly string[] {
  const [was, is] = [new Map(Object.entries(before ?? {})), new Map(Object.entries(after ?? {}))];
  return [...new Set([...was.keys(), ...is.keys()])].filter((column) => was.get(column) !== is.get(column));
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

/**
 * Names a derived figure that is a plain value and often stays the same when what it reads changes: its readers are
 * asked again only when it really is another one.
 *
 * @param name  unique among all queries
 * @param compute  reads through the plant only; must be a pure function of what it reads
 */
export function defineSteadyQuery<T extends number | string | boolean | null>(
  name: string,
  compute: (plant: Plant, key: string) => T,
): Query<T> {
  return (plant, key) => plant.derive(name, key, () => compute(plant, key), true);
}

import { type Row, type Settings, type TableName, tableNames } from "./tables.ts";

/** A route in memory: immutable tables of immutable rows, by id. */
export type Route = { readonly [T in TableName]: ReadonlyMap<string, Row<T>> };

/** The id of the one settings row. */
export const settingsId = "settings";

/** A route without rows. */
export function emptyRoute(): Route {
  return Object.fromEntries(tableNames.map((name) => [name, new Map()])) as unknown as Route; // fromEntries cannot keep the keys' types
}

/**
 * The settings of a route.
 *
 * @throws Error when the row is missing, which no opened file allows
 */
export function settingsOf(route: Route): Settings {
  const row = route.settings.get(settingsId);
  if (!row) throw new Error("a route has lost its settings row");
  return row;
}

import type { Route } from "./route.ts";
import type { TableName } from "./tables.ts";

/**
 * Gives out ids for new rows of a table: `pole-1`, `pole-2`, ... from after the greatest number in use, the same each time for
 * the same route.
 *
 * @returns a function that gives the next id at every call
 */
export function freshIds(route: Route, table: TableName): () => string {
  const prefix = `${table}-`;
  let last = 0;
  for (const id of route[table].keys()) {
    const tail = id.startsWith(prefix) ? id.slice(prefix.length) : "";
    if (/^\d{1,12}$/.test(tail)) last = Math.max(last, Number(tail));
  }
  return () => {
    last += 1;
    return `${prefix}${last}`;
  };
}

import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { rowEdit } from "./tableRow.ts";

/** The edits that take back what was accepted of a reading: another was read. */
export function acceptedOf(route: Route, readingId: string): RowChange[] {
  return [...route.waiver.values()]
    .filter((one) => ` ${one.subjects} `.includes(` ${readingId} `))
    .map((one) => rowEdit("waiver", one, null));
}

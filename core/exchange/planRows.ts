import { freshIds } from "../model/freshId.ts";
import { ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { TableName } from "../model/tables.ts";
import type { BadRow } from "./badRow.ts";
import { countRows, type ImportRequest, type PlannedRows } from "./importPlan.ts";
import type { ColumnMap } from "./mapColumns.ts";
import type { ReadRows } from "./rowReader.ts";

/** Lists a row as bad: the field at fault and its value, what is wrong with it, what would be taken. */
type Refuse = (field: string, value: string, what: string, accepted: string) => void;

/** How rows of a file come to stand in a table of the route. */
type Landing<Read, Placed> = {
  readonly table: TableName;
  /** All columns of the row but its id; null where it was refused. */
  readonly place: (read: Read, refuse: Refuse) => Placed | null;
  /** Rows with the same key are the same thing. */
  readonly keyOf: (row: Placed) => string;
  readonly refuseTwin: (read: Read, earlierLine: number, refuse: Refuse) => void;
};

/** What rows read from a file would do to a route: added, put in place of those that are there, skipped or refused. */
export function planRows<Read extends { readonly fileLine: number }, Placed extends object>(
  route: Route,
  request: ImportRequest,
  map: ColumnMap,
  read: ReadRows<Read>,
  { table, place, keyOf, refuseTwin }: Landing<Read, Placed>,
): Result<PlannedRows> {
  const rowsOf = route[table] as unknown as ReadonlyMap<string, Placed & { readonly id: string }>; // what is placed is a row of that table
  const present = new Map([...rowsOf.values()].map((one) => [keyOf(one), one]));
  const nextId = freshIds(route, table);
  const rows: RowChange[] = [];
  const bad: BadRow[] = [...read.bad];
  const firstLine = new Map<string, number>();
  let skippedCount = 0;
  for (const one of read.rows) {
    const refuse: Refuse = (field, value, what, accepted) => {
      bad.push({ file: request.table.name, line: one.fileLine, column: map[field] ?? "", value, what, accepted });
    };
    const placed = place(one, refuse);
    if (!placed) continue;
    const key = keyOf(placed);
    const earlierLine = firstLine.get(key);
    if (earlierLine !== undefined) {
      refuseTwin(one, earlierLine, refuse);
      continue;
    }
    firstLine.set(key, one.fileLine);
    const before = present.get(key) ?? null;
    if (before && request.onExisting === "skip") skippedCount += 1;
    else rows.push(changeOf(table, before, { ...placed, id: before?.id ?? nextId() }));
  }
  const counts = countRows(rows, table);
  return ok({ rows, ...counts, skippedCount, spanCount: 0, bad, notes: read.notes, spansForReview: [] });
}

function changeOf(table: TableName, before: object | null, after: { readonly id: string }): RowChange {
  return { table, id: after.id, before, after } as RowChange; // the landing of that very table made the columns
}

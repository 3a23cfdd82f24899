import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import { type Row, type TableName, tableNames, tables } from "../model/tables.ts";
import { sameRow } from "./sameRow.ts";

/** An edit as a value: the same list saves, undoes, audits, compares and merges. */
export type Change = {
  readonly label: string;
  readonly author: string;
  readonly atIso: string;
  readonly rows: readonly RowChange[];
};

/** The edit that takes this one back. */
export function invert(change: Change): Change {
  const rows = change.rows.map((row) => ({ ...row, before: row.after, after: row.before }) as RowChange); // both sides are rows of one table
  return { ...change, rows: rows.reverse() };
}

/**
 * The route after an edit: all rows or none.
 *
 * Refuses with code "conflict" where a `before` no longer holds, "bad-row" where an `after` breaks its table's schema.
 */
export function applyChange(route: Route, change: Pick<Change, "rows">): Result<Route> {
  const touched = new Map<TableName, Map<string, Row<TableName>>>();
  for (const row of change.rows) {
    const table = touched.get(row.table) ?? new Map<string, Row<TableName>>(route[row.table]);
    touched.set(row.table, table);
    const present = table.get(row.id) ?? null;
    if (!sameRow(present, row.before)) return conflict(row, present);
    if (row.after === null) {
      table.delete(row.id);
      continue;
    }
    const checked = tables[row.table].safeParse(row.after);
    if (!checked.success || row.after.id !== row.id) {
      const issue = checked.error?.issues[0];
      return fail(
        "bad-row",
        `The ${row.table} row does not fit its table: ${issue?.message ?? "its id was changed"}.`,
        `${row.table} ${row.id}${issue ? `, ${issue.path.join(".")}` : ""}`,
        "Correct the value and try again; nothing was changed.",
      );
    }
    table.set(row.id, row.after);
  }
  return ok({ ...route, ...Object.fromEntries(touched) });
}

function conflict(row: RowChange, present: object | null): Result<Route> {
  const what =
    present === null
      ? `The ${row.table} this edit was made on is gone.`
      : row.before === null
        ? `There is already a ${row.table} with this id.`
        : `The ${row.table} was changed meanwhile.`;
  return fail("conflict", what, `${row.table} ${row.id}`, "Look at the present state and make the edit again.");
}

/** Every row of a route as an edit that adds it; what a new file is filled with. */
export function changeThatFills(route: Route): RowChange[] {
  return tableNames.flatMap(
    (table) => [...route[table].values()].map((after) => ({ table, id: after.id, before: null, after }) as RowChange), // row and table come from one map
  );
}

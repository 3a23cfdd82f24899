import type { RowChange } from "../model/rowChange.ts";
import type { Change } from "./change.ts";
import { sameRow } from "./sameRow.ts";

/**
 * Whether a second edit only carries the first one on, as two nudges of one terminal do: the same label by the same person on
 * the same rows, none added or taken away, the second made on what the first left.
 */
export function mergeable(a: Change, b: Change): boolean {
  if (a.label !== b.label || a.author !== b.author || a.rows.length !== b.rows.length || a.rows.length === 0)
    return false;
  const first = byKey(a.rows);
  return (
    first.size === a.rows.length &&
    b.rows.every((row) => {
      const before = first.get(`${row.table} ${row.id}`);
      const isUpdate = row.before !== null && row.after !== null && before?.before != null && before.after !== null;
      return isUpdate && sameRow(before.after, row.before);
    })
  );
}

/** Two mergeable edits as one, at the time of the second. */
export function mergeChanges(a: Change, b: Change): Change {
  const first = byKey(a.rows);
  const rows = b.rows.map((row) => {
    const before = first.get(`${row.table} ${row.id}`)?.before ?? null;
    return { ...row, before } as RowChange; // both sides are rows of one table
  });
  return { ...b, rows };
}

function byKey(rows: readonly RowChange[]): ReadonlyMap<string, RowChange> {
  return new Map(rows.map((row) => [`${row.table} ${row.id}`, row]));
}

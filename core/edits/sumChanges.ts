import { inWriteOrder } from "../layout/rowSet.ts";
import type { RowChange } from "../model/rowChange.ts";
import { sameRow } from "./sameRow.ts";

/**
 * Edits that followed one another as one: each row from before the first to after the last that touched it. What was changed and changed
 * back is not in it.
 */
export function sumChanges(edits: readonly (readonly RowChange[])[]): RowChange[] {
  const sum = new Map<string, RowChange>();
  for (const row of edits.flat()) {
    const key = `${row.table} ${row.id}`;
    const first = sum.get(key);
    sum.set(key, first ? ({ ...row, before: first.before } as RowChange) : row); // both sides are rows of one table
  }
  return inWriteOrder([...sum.values()].filter((row) => !sameRow(row.before, row.after)));
}

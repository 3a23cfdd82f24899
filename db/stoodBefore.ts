import type { ReadDb } from "./driver.ts";
import { historyOfRow } from "./history.ts";
import { journalledChange } from "./journal.ts";

/** Edits of one row that are looked through; a row edited oftener than this has its oldest states forgotten. */
const mostEdits = 200;

/** Whether a row was ever as told, by an edit that was not taken back. */
export function stoodBefore(
  db: ReadDb,
  row: { readonly table: string; readonly id: string },
  isIt: (state: Readonly<Record<string, unknown>>) => boolean,
): boolean {
  const settled = new Set<number>();
  // newest first: the first word about an edit, its undo or redo among them, is the last one
  for (const { seq, ofSeq, kind } of historyOfRow(db, row, mostEdits)) {
    const edit = ofSeq ?? seq;
    if (settled.has(edit)) continue;
    settled.add(edit);
    if (kind === "undo") continue;
    const change = journalledChange(db, edit);
    if (!change.ok) continue;
    const after = change.value.rows.find((one) => one.table === row.table && one.id === row.id)?.after;
    if (after && isIt({ ...after })) return true;
  }
  return false;
}

import type { Change } from "../core/edits/change.ts";
import { ok, type Result } from "../core/model/result.ts";
import { appendEntry } from "./chain.ts";
import type { WriteDb } from "./driver.ts";
import { onDisk } from "./sqliteFault.ts";
import { transact } from "./transact.ts";
import { writeRows } from "./writeRows.ts";

/** An edit of a person's, or the taking back or making again of the edit with that number in the journal. */
type JournalKind =
  | { readonly kind: "edit" }
  | { readonly kind: "undo"; readonly ofSeq: number }
  | { readonly kind: "redo"; readonly ofSeq: number };

/**
 * Writes an edit and its journal row in one transaction; when this answers ok, both are on the disk.
 *
 * An edit without rows is not journalled. Faults, with nothing written: conflict, bad-row, broken-reference, and the disk's.
 */
export function writeChange(db: WriteDb, change: Change, about: JournalKind = { kind: "edit" }): Result<Change> {
  if (change.rows.length === 0) return ok(change);
  return onDisk("route file", () =>
    transact(db, () => {
      const fault = writeRows(db, change.rows);
      if (fault) return { ok: false, fault };
      const ofSeq = about.kind === "edit" ? null : about.ofSeq;
      const { label, author, atIso } = change;
      appendEntry(db, { label, author, atIso, kind: about.kind, ofSeq, rowsJson: JSON.stringify(change.rows) });
      return ok(change);
    }),
  );
}

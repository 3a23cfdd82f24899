import type { Change } from "../core/edits/change.ts";
import { mergeable, mergeChanges } from "../core/edits/mergeChange.ts";
import { ok, type Result } from "../core/model/result.ts";
import { rewriteNewest } from "./chain.ts";
import type { WriteDb } from "./driver.ts";
import { journalEntry, journalledChange } from "./journal.ts";
import { onDisk } from "./sqliteFault.ts";
import { transact } from "./transact.ts";
import { writeChange } from "./writeChange.ts";
import { writeRows } from "./writeRows.ts";

/**
 * Writes an edit that carries the newest one on, as nudges under a held key do: the two stand in the journal as one, and
 * one undo takes both back.
 *
 * Where the newest line of the journal is an undo or a redo, or an edit this one does not carry on, it is written as an edit of
 * its own. Faults as for `writeChange`, with nothing written.
 */
export function carryOn(db: WriteDb, change: Change): Result<Change> {
  const seq = Number(db.get("SELECT max(seq) AS seq FROM journal")?.seq ?? 0);
  const former = journalEntry(db, seq)?.kind === "edit" ? journalledChange(db, seq) : null;
  if (!former?.ok || !mergeable(former.value, change)) return writeChange(db, change, { kind: "edit" });
  const merged = mergeChanges(former.value, change);
  return onDisk("route file", () =>
    transact(db, () => {
      const fault = writeRows(db, change.rows);
      if (fault) return { ok: false, fault };
      rewriteNewest(db, { ...merged, seq, kind: "edit", ofSeq: null, rowsJson: JSON.stringify(merged.rows) });
      return ok(change);
    }),
  );
}

import { type Change, invert } from "../core/edits/change.ts";
import { fail, type Result } from "../core/model/result.ts";
import type { ReadDb, WriteDb } from "./driver.ts";
import { type JournalEntry, journalEntry, journalledChange } from "./journal.ts";
import type { Stamp } from "./lock.ts";
import { writeChange } from "./writeChange.ts";

/** What has been done to the route, newest first, undo and redo among it. */
export function history(db: ReadDb, limit: number): JournalEntry[] {
  const found = db.all("SELECT seq FROM journal ORDER BY seq DESC LIMIT ?", limit);
  return found.flatMap(({ seq }) => journalEntry(db, Number(seq)) ?? []);
}

/** Everything in the journal that touched one row, newest first, undo and redo among it. */
export function historyOfRow(
  db: ReadDb,
  row: { readonly table: string; readonly id: string },
  limit: number,
): JournalEntry[] {
  const found = db.all(
    // the plain search for the id spares reading the rows of edits that cannot have touched it
    `SELECT seq FROM journal
     WHERE instr(rows_json, ?) > 0 AND EXISTS (
       SELECT 1 FROM json_each(rows_json)
       WHERE json_extract(value, '$.id') = ? AND json_extract(value, '$.table') = ?)
     ORDER BY seq DESC LIMIT ?`,
    JSON.stringify(row.id),
    row.id,
    row.table,
    limit,
  );
  return found.flatMap(({ seq }) => journalEntry(db, Number(seq)) ?? []);
}

/** The edits that undo would take back, the next one first. */
export function undoable(db: ReadDb, limit: number): JournalEntry[] {
  const steps: JournalEntry[] = [];
  let top = standing(db, newest(db));
  while (top && steps.length < limit) {
    steps.push(top);
    top = standing(db, journalEntry(db, top.seq - 1));
  }
  return steps;
}

/** The edits that redo would make again, the next one first; an edit clears them. */
export function redoable(db: ReadDb, limit: number): JournalEntry[] {
  const steps: JournalEntry[] = [];
  let madeAgainCount = 0;
  let entry = newest(db);
  while (entry && entry.kind !== "edit" && steps.length < limit) {
    if (entry.kind === "redo") madeAgainCount += 1;
    else if (madeAgainCount > 0) madeAgainCount -= 1;
    else steps.push(editOf(db, entry));
    entry = journalEntry(db, entry.seq - 1);
  }
  return steps;
}

/** Takes back the newest edit that stands; answers with the change to make in memory. */
export function undo(db: WriteDb, stamp: Stamp): Result<Change> {
  const step = undoable(db, 1)[0];
  if (!step) return fail("nothing-to-undo", "There is nothing to undo.", "journal", "Make an edit first.");
  const change = journalledChange(db, step.seq);
  if (!change.ok) return change;
  return writeChange(db, { ...invert(change.value), ...signed(stamp) }, { kind: "undo", ofSeq: step.seq });
}

/** Makes the edit again that was taken back last; answers with the change to make in memory. */
export function redo(db: WriteDb, stamp: Stamp): Result<Change> {
  const step = redoable(db, 1)[0];
  if (!step) return fail("nothing-to-redo", "There is nothing to redo.", "journal", "Undo an edit first.");
  const change = journalledChange(db, step.seq);
  if (!change.ok) return change;
  return writeChange(db, { ...change.value, ...signed(stamp) }, { kind: "redo", ofSeq: step.seq });
}

function signed({ author, atIso }: Stamp): Stamp {
  return { author, atIso };
}

function newest(db: ReadDb): JournalEntry | null {
  const found = db.get("SELECT max(seq) AS seq FROM journal");
  return typeof found?.seq === "number" ? journalEntry(db, found.seq) : null;
}

/**
 * The newest edit that stands after an entry of the journal. After an undo that is whatever stood before the edit was made,
 * so each look goes straight to an older entry and never over the whole journal.
 */
function standing(db: ReadDb, after: JournalEntry | null): JournalEntry | null {
  let entry = after;
  while (entry?.kind === "undo") entry = journalEntry(db, editOf(db, entry).seq - 1);
  return entry && editOf(db, entry);
}

function editOf(db: ReadDb, entry: JournalEntry): JournalEntry {
  const edit = entry.ofSeq === null ? entry : journalEntry(db, entry.ofSeq);
  if (!edit) throw new Error(`the journal has lost entry ${entry.ofSeq}`);
  return edit;
}

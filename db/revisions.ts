import { applyChange, invert } from "../core/edits/change.ts";
import { sumChanges } from "../core/edits/sumChanges.ts";
import { ok, type Result } from "../core/model/result.ts";
import type { Route } from "../core/model/route.ts";
import type { RowChange } from "../core/model/rowChange.ts";
import type { ReadDb } from "./driver.ts";
import { journalledChange } from "./journal.ts";

/**
 * Number of the journal's entry that brought a revision in, the newest where it was taken back and made again; 0 where it was in the file
 * from the start. The route as of that entry is what was issued.
 */
function issuedAt(db: ReadDb, revisionId: string): number {
  const found = db.get(
    `SELECT max(seq) AS seq FROM journal
     WHERE instr(rows_json, ?) > 0 AND EXISTS (
       SELECT 1 FROM json_each(rows_json)
       WHERE json_extract(value, '$.id') = ? AND json_extract(value, '$.table') = 'revision'
         AND json_extract(value, '$.before') IS NULL AND json_extract(value, '$.after') IS NOT NULL)`,
    JSON.stringify(revisionId),
    revisionId,
  );
  return typeof found?.seq === "number" ? found.seq : 0;
}

/** A letter and the revision it was given to. */
export type IssuedLetter = { readonly letter: string; readonly revisionId: string };

/** Every letter a revision was ever issued under, also of those taken back since, oldest first. */
export function lettersIssued(db: ReadDb): readonly IssuedLetter[] {
  const found = db.all(
    `SELECT json_extract(value, '$.after.letter') AS letter, json_extract(value, '$.id') AS revisionId
     FROM journal, json_each(rows_json)
     WHERE instr(rows_json, '"revision"') > 0
       AND json_extract(value, '$.table') = 'revision'
       AND json_extract(value, '$.before') IS NULL AND json_extract(value, '$.after') IS NOT NULL
     ORDER BY seq`,
  );
  return found.map(({ letter, revisionId }) => ({ letter: String(letter), revisionId: String(revisionId) }));
}

/**
 * What was edited from the issue of one revision on, up to the issue of a later one, as one edit; up to now where no later one is named.
 * Faults: damaged, where the journal cannot be read.
 */
export function editedSince(db: ReadDb, revisionId: string, untilId: string | null = null): Result<RowChange[]> {
  const last = untilId === null ? null : issuedAt(db, untilId);
  const seqs = db.all(
    "SELECT seq FROM journal WHERE seq > ? AND (? IS NULL OR seq <= ?) ORDER BY seq",
    issuedAt(db, revisionId),
    last,
    last,
  );
  const edits: (readonly RowChange[])[] = [];
  for (const { seq } of seqs) {
    const edit = journalledChange(db, Number(seq));
    if (!edit.ok) return edit;
    edits.push(edit.value.rows);
  }
  return ok(sumChanges(edits));
}

/** The route as it was when a revision was issued, every row of every table. */
export function routeAtRevision(db: ReadDb, route: Route, revisionId: string): Result<Route> {
  const since = editedSince(db, revisionId);
  if (!since.ok) return since;
  return applyChange(route, invert({ label: "", author: "", atIso: "", rows: since.value }));
}

import { z } from "zod";
import type { Change } from "../core/edits/change.ts";
import { fail, ok, type Result } from "../core/model/result.ts";
import type { RowChange } from "../core/model/rowChange.ts";
import { tableNames } from "../core/model/tables.ts";
import type { ReadDb } from "./driver.ts";
import { checkRow } from "./rowCheck.ts";

const entrySchema = z.strictObject({
  seq: z.number().int(),
  label: z.string(),
  author: z.string(),
  atIso: z.string(),
  kind: z.enum(["edit", "undo", "redo"]),
  /** The edit an undo took back or a redo made again. */
  ofSeq: z.number().int().nullable(),
});

/** One line of the journal, without its rows. */
export type JournalEntry = Readonly<z.infer<typeof entrySchema>>;

const rowObject = z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.null()])).nullable();
const rowsSchema = z.array(
  z.strictObject({ table: z.enum(tableNames), id: z.string(), before: rowObject, after: rowObject }),
);

/** The journal's entry of that number; null before the first. */
export function journalEntry(db: ReadDb, seq: number): JournalEntry | null {
  const found = db.get(selectEntry, seq);
  return found ? entrySchema.parse(found) : null;
}

/** The edit that stands in the journal under that number, its rows checked as any that come from a file. */
export function journalledChange(db: ReadDb, seq: number): Result<Change> {
  const entry = journalEntry(db, seq);
  const found = db.get("SELECT rows_json AS rows FROM journal WHERE seq = ?", seq);
  if (!entry || typeof found?.rows !== "string") throw new Error(`the journal has lost entry ${seq}`);
  const rows = rowsSchema.safeParse(JSON.parse(found.rows));
  if (!rows.success) return fail("damaged", "The journal cannot be read.", `journal ${seq}`, mend);
  for (const { table, before, after } of rows.data) {
    for (const side of [before, after]) {
      const checked = side && checkRow(table, side, mend);
      if (checked && !checked.ok) return checked;
    }
  }
  const { label, author, atIso } = entry;
  return ok({ label, author, atIso, rows: rows.data as RowChange[] }); // each side has just been checked by its table's schema
}

const mend = "This edit can no longer be undone; make it by hand.";

const selectEntry = `
  SELECT seq, label, author, at_iso AS atIso, kind, of_seq AS ofSeq FROM journal WHERE seq = ?`;

import type { WriteDb } from "../driver.ts";
import { catalogueTables } from "./0001/catalogueTables.ts";
import { lineTables } from "./0001/lineTables.ts";
import { officeTables } from "./0001/officeTables.ts";
import { serviceTables } from "./0001/serviceTables.ts";

export const version = 1;

/** Every edit in the order it was made; undo and redo are edits of their own that name the edit they are about. */
const journal = `
CREATE TABLE journal (
  seq INTEGER PRIMARY KEY,
  label TEXT NOT NULL,
  author TEXT NOT NULL,
  at_iso TEXT NOT NULL CHECK (length(at_iso) > 0),
  kind TEXT NOT NULL CHECK (kind IN ('edit', 'undo', 'redo')),
  of_seq INTEGER REFERENCES journal (seq) DEFERRABLE INITIALLY DEFERRED CHECK (of_seq < seq),
  rows_json TEXT NOT NULL CHECK (json_valid(rows_json)),
  CHECK ((kind = 'edit') = (of_seq IS NULL))
) STRICT;
CREATE INDEX journal_of_seq ON journal (of_seq);
`;

/** The first route file: every table of the model, and the journal. */
export function up(db: WriteDb): void {
  for (const sql of [catalogueTables, officeTables, lineTables, serviceTables, journal]) db.exec(sql);
}

import type { WriteDb } from "../driver.ts";

export const version = 19;

/**
 * Every entry of the journal carries the hash of itself and of all before it; the newest stands once more in the head, so that a journal cut
 * short is found too. A climb rewrites what the journal remembers: each leaves a record, and the entries are chained anew from it.
 */
export function up(db: WriteDb): void {
  db.exec(`
    ALTER TABLE journal ADD COLUMN hash TEXT NOT NULL DEFAULT '' CHECK (length(hash) IN (0, 64));
    CREATE TABLE journal_head (
      id INTEGER PRIMARY KEY NOT NULL CHECK (id = 1),
      seq INTEGER NOT NULL CHECK (seq >= 0),
      hash TEXT NOT NULL CHECK (length(hash) = 64)
    ) STRICT;
    CREATE TABLE journal_climb (
      version INTEGER PRIMARY KEY NOT NULL CHECK (version >= 1),
      at_iso TEXT NOT NULL CHECK (length(at_iso) > 0),
      former_hash TEXT NOT NULL CHECK (length(former_hash) IN (0, 64)),
      broken TEXT NOT NULL,
      signatures_json TEXT NOT NULL CHECK (json_valid(signatures_json)),
      hash TEXT NOT NULL CHECK (length(hash) = 64)
    ) STRICT;
  `);
}

import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 21;

/** Spare terminals in the bill of materials; a file of before orders as many as are drawn. */
export function up(db: WriteDb): void {
  db.exec(
    "ALTER TABLE settings ADD COLUMN piece_allowance_frac REAL NOT NULL DEFAULT 0 CHECK (piece_allowance_frac BETWEEN 0 AND 1)",
  );
  liftJournal(db, { settings: (row) => ({ ...row, pieceAllowanceFrac: 0 }) });
}

import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 15;

/**
 * The order revisions were issued in, who approved them, who took them out of use. Revisions of before stand in the order of their dates,
 * approved by nobody.
 */
export function up(db: WriteDb): void {
  db.exec(`
    ALTER TABLE revision ADD COLUMN number INTEGER NOT NULL DEFAULT 1 CHECK (number >= 1);
    ${standing.map((column) => `ALTER TABLE revision ADD COLUMN ${column} TEXT NOT NULL DEFAULT '' CHECK (length(${column}) <= 2000);`).join("\n")}
    UPDATE revision SET number = 1 + (
      SELECT count(*) FROM revision AS other
      WHERE (other.date_iso, other.letter, other.id) < (revision.date_iso, revision.letter, revision.id));
  `);
  const numbers = new Map(db.all("SELECT id, number FROM revision").map((row) => [row.id, row.number]));
  liftJournal(db, {
    revision: (row) => ({
      ...row,
      number: numbers.get(String(row.id)) ?? 1,
      approvedBy: "",
      approvedIso: "",
      voidedBy: "",
      voidedIso: "",
      voidReason: "",
    }),
  });
}

const standing = ["approved_by", "approved_iso", "voided_by", "voided_iso", "void_reason"];

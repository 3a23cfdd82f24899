import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 3;

/** How strand is held at the poles between its dead ends: until now every span hung by itself. */
export function up(db: WriteDb): void {
  const column = "TEXT NOT NULL DEFAULT 'clamped' CHECK";
  db.exec(`ALTER TABLE strand_section ADD COLUMN at_poles ${column} (at_poles IN ('clamped', 'slipping'))`);
  db.exec(`ALTER TABLE settings ADD COLUMN strand_at_poles ${column} (strand_at_poles IN ('clamped', 'slipping'))`);
  liftJournal(db, {
    strandSection: (row) => ({ ...row, atPoles: "clamped" }),
    settings: (row) => ({ ...row, strandAtPoles: "clamped" }),
  });
}

import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 10;

/** Ports of a terminal held for whoever comes later, and for whom; a terminal of before holds none. */
export function up(db: WriteDb): void {
  db.exec(`
    ALTER TABLE terminal ADD COLUMN reserved_port_count INTEGER NOT NULL DEFAULT 0 CHECK (reserved_port_count >= 0);
    ALTER TABLE terminal ADD COLUMN reserved_for TEXT NOT NULL DEFAULT '' CHECK (length(reserved_for) <= 2000);
  `);
  liftJournal(db, { terminal: (row) => ({ ...row, reservedPortCount: 0, reservedFor: "" }) });
}

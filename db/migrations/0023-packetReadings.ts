import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 23;

/**
 * Whose packet a reading came by and what the crew knew when it read, so that packets of several crews give the same in any order; and the
 * wavelengths a packet asks for, so that its page can be written again. What a file of before holds stands as if a person had decided for it.
 */
export function up(db: WriteDb): void {
  const madeOn = "made_on TEXT NOT NULL DEFAULT '' CHECK (length(made_on) <= 20000)";
  db.exec(`
    ALTER TABLE reading ADD COLUMN packet_id TEXT REFERENCES packet (id) DEFERRABLE INITIALLY DEFERRED;
    ALTER TABLE reading ADD COLUMN ${madeOn};
    CREATE INDEX reading_packet_id ON reading (packet_id);
    ALTER TABLE rival_reading ADD COLUMN ${madeOn};
    ALTER TABLE packet ADD COLUMN wavelengths_nm TEXT NOT NULL DEFAULT '' CHECK (length(wavelengths_nm) <= 100);
  `);
  liftJournal(db, {
    reading: (row) => ({ ...row, packetId: null, madeOn: "" }),
    rivalReading: (row) => ({ ...row, madeOn: "" }),
    packet: (row) => ({ ...row, wavelengthsNm: "" }),
  });
}

import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 5;

/**
 * Reach and difference between units of an optical class, taps that let light go on, and whether fiber beyond a cut is used again. A class of
 * before allows the difference between its own two limits, and 20 km.
 */
export function up(db: WriteDb): void {
  const positive = (name: string) => `REAL NOT NULL DEFAULT 20000 CHECK (${name} > 0 AND ${name} < 9e999)`;
  db.exec(`
    ALTER TABLE optical_class ADD COLUMN differential_db ${positive("differential_db")};
    ALTER TABLE optical_class ADD COLUMN reach_m ${positive("reach_m")};
    UPDATE optical_class SET differential_db = max(max_loss_db - min_loss_db, 1);
    ALTER TABLE splitter_type ADD COLUMN through_loss_db REAL NOT NULL DEFAULT 0
      CHECK (through_loss_db >= 0 AND through_loss_db < 9e999);
    ALTER TABLE settings ADD COLUMN dead_length TEXT NOT NULL DEFAULT 'left' CHECK (dead_length IN ('left', 'reused'));
  `);
  liftJournal(db, {
    opticalClass: (row) => ({
      ...row,
      differentialDb: Math.max(Number(row.maxLossDb) - Number(row.minLossDb), 1),
      reachM: 20000,
    }),
    splitterType: (row) => ({ ...row, throughLossDb: 0 }),
    settings: (row) => ({ ...row, deadLength: "left" }),
  });
}

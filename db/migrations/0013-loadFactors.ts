import type { WriteDb } from "../driver.ts";
import { basisColumns } from "./0002/sqlWords.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 13;

/** What fiber cable may be pulled with for want of its maker's figure, N: 600 lbf. */
const pullN = 2668.9329691563;

/**
 * Load factors of a strength set, and how hard a cable may be pulled. A set of before has its factors in its limits, so it gets no rows;
 * every cable of before gets the figure for most cable.
 */
export function up(db: WriteDb): void {
  db.exec(`
CREATE TABLE load_factor (
  id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
  strength_set_id TEXT NOT NULL REFERENCES strength_set (id) DEFERRABLE INITIALLY DEFERRED,
  load TEXT NOT NULL CHECK (load IN ('vertical', 'wind', 'windAtCrossing', 'tension', 'deadEnd')),
  condition TEXT NOT NULL CHECK (condition IN ('loaded', 'extremeWind', 'extremeIce')),
  factor REAL NOT NULL CHECK (factor > 0 AND factor < 9e999), ${basisColumns}
) STRICT;
CREATE INDEX load_factor_strength_set_id ON load_factor (strength_set_id);
ALTER TABLE cable_type ADD COLUMN pull_n REAL NOT NULL DEFAULT ${pullN} CHECK (pull_n > 0 AND pull_n < 9e999);
`);
  liftJournal(db, { cableType: (row) => ({ ...row, pullN }) });
}

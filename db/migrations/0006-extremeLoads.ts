import type { WriteDb } from "../driver.ts";
import { basisColumns } from "./0002/sqlWords.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 6;

const rowId = "id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80)";
const name = "name TEXT NOT NULL CHECK (length(trim(name)) BETWEEN 1 AND 200)";
const amount = (column: string) => `${column} REAL NOT NULL CHECK (${column} >= 0 AND ${column} < 9e999)`;
const positive = (column: string) => `${column} REAL NOT NULL CHECK (${column} > 0 AND ${column} < 9e999)`;
const degrees = "temperature_deg_c REAL NOT NULL CHECK (abs(temperature_deg_c) < 9e999)";

/** Extreme wind, extreme ice with wind, and a worker on the strand, as cases of strength. No route of before is checked under them. */
export function up(db: WriteDb): void {
  db.exec(`
CREATE TABLE extreme_wind (
  ${rowId}, ${name}, ${positive("gust_m_per_s")}, ${positive("shape_factor")}, ${positive("importance_factor")},
  ${degrees}, ${amount("above_m")}, ${basisColumns}
) STRICT;
CREATE TABLE extreme_ice (
  ${rowId}, ${name}, ${amount("ice_m")}, ${positive("ice_density_kg_per_m3")}, ${amount("gust_m_per_s")},
  ${positive("shape_factor")}, ${degrees}, ${amount("above_m")}, ${basisColumns}
) STRICT;
CREATE TABLE wind_factor (
  ${rowId}, ${name}, kind TEXT NOT NULL CHECK (kind IN ('height', 'span')), ${positive("up_to_m")}, ${positive("factor")},
  ${basisColumns}
) STRICT;

ALTER TABLE settings ADD COLUMN extreme_wind_id TEXT REFERENCES extreme_wind (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE settings ADD COLUMN extreme_ice_id TEXT REFERENCES extreme_ice (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE settings ADD COLUMN worker_load_n REAL NOT NULL DEFAULT 0 CHECK (worker_load_n >= 0 AND worker_load_n < 9e999);
CREATE INDEX settings_extreme_wind_id ON settings (extreme_wind_id);
CREATE INDEX settings_extreme_ice_id ON settings (extreme_ice_id);

CREATE TABLE strength_limit_next (
  ${rowId},
  strength_set_id TEXT NOT NULL REFERENCES strength_set (id) DEFERRABLE INITIALLY DEFERRED,
  part TEXT NOT NULL CHECK (part IN ('strand', 'pullDifference', 'guy', 'anchor')),
  condition TEXT NOT NULL
    CHECK (condition IN ('stringing', 'hot', 'iced', 'loaded', 'extremeWind', 'extremeIce', 'worker')),
  limit_frac REAL NOT NULL CHECK (limit_frac BETWEEN 0 AND 1), ${basisColumns}
) STRICT;
INSERT INTO strength_limit_next SELECT * FROM strength_limit ORDER BY rowid;
DROP TABLE strength_limit;
ALTER TABLE strength_limit_next RENAME TO strength_limit;
CREATE INDEX strength_limit_strength_set_id ON strength_limit (strength_set_id);
`);
  liftJournal(db, { settings: (row) => ({ ...row, extremeWindId: null, extremeIceId: null, workerLoadN: 0 }) });
}

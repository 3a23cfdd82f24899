import type { WriteDb } from "../driver.ts";

export const version = 8;

/** How the latest layout came out, and whom it could not serve. A file of before tells of none. */
export function up(db: WriteDb): void {
  const count = (name: string) => `${name} INTEGER NOT NULL CHECK (${name} >= 0)`;
  db.exec(`
    CREATE TABLE layout_record (
      id TEXT PRIMARY KEY NOT NULL CHECK (id = 'layout'),
      ${count("terminal_count")},
      ${count("served_count")},
      ${count("unserved_count")},
      cost REAL NOT NULL CHECK (cost >= 0 AND cost < 9e999),
      bound REAL CHECK (bound >= 0 AND bound < 9e999),
      ended TEXT NOT NULL CHECK (ended IN ('proven', 'rested', 'work', 'time', 'stopped', 'moment')),
      ${count("step_count")},
      digest TEXT NOT NULL CHECK (length(trim(digest)) BETWEEN 1 AND 200)
    ) STRICT;
    CREATE TABLE unserved_unit (
      id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
      living_unit_id TEXT NOT NULL REFERENCES living_unit (id) DEFERRABLE INITIALLY DEFERRED,
      kind TEXT NOT NULL CHECK (kind IN ('reach', 'noStrand', 'forbidden', 'crossing', 'capacity', 'fibers')),
      reason TEXT NOT NULL CHECK (length(reason) <= 2000)
    ) STRICT;
    CREATE INDEX unserved_unit_living_unit_id ON unserved_unit (living_unit_id);
  `);
}

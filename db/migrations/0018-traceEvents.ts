import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 18;

/** What a kept trace shows: its events one a row, and how it was taken. A trace kept before has no events: it is brought in again. */
export function up(db: WriteDb): void {
  for (const column of columns) db.exec(`ALTER TABLE trace ADD COLUMN ${column}`);
  db.exec(traceEvent);
  liftJournal(db, { trace: (row) => ({ ...row, ...standing }) });
}

const standing = {
  takenIso: "",
  groupIndex: 1.468,
  pulseNs: 100,
  spacingM: 1,
  leadM: null,
  totalLossDb: null,
  returnLossDb: null,
};

const over0 = (name: string, value: number) =>
  `${name} REAL NOT NULL DEFAULT ${value} CHECK (${name} > 0 AND ${name} < 9e999)`;

const columns = [
  "taken_iso TEXT NOT NULL DEFAULT '' CHECK (length(taken_iso) <= 2000)",
  over0("group_index", standing.groupIndex),
  over0("pulse_ns", standing.pulseNs),
  over0("spacing_m", standing.spacingM),
  "lead_m REAL CHECK (lead_m >= 0 AND lead_m < 9e999)",
  "total_loss_db REAL CHECK (abs(total_loss_db) < 9e999)",
  "return_loss_db REAL CHECK (abs(return_loss_db) < 9e999)",
];

const traceEvent = `
  CREATE TABLE trace_event (
    id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 300),
    trace_id TEXT NOT NULL REFERENCES trace (id) DEFERRABLE INITIALLY DEFERRED,
    "number" INTEGER NOT NULL CHECK ("number" >= 1),
    at_m REAL NOT NULL CHECK (at_m >= 0 AND at_m < 9e999),
    loss_db REAL NOT NULL CHECK (abs(loss_db) < 9e999),
    reflectance_db REAL CHECK (abs(reflectance_db) < 9e999),
    slope_db_per_km REAL NOT NULL CHECK (abs(slope_db_per_km) < 9e999),
    reflects INTEGER NOT NULL CHECK (reflects IN (0, 1)),
    ends INTEGER NOT NULL CHECK (ends IN (0, 1))
  ) STRICT;
  CREATE INDEX trace_event_trace_id ON trace_event (trace_id);
`;

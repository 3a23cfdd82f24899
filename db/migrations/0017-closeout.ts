import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";

export const version = 17;

/**
 * What was built: states, readings, packets, photos, traces, punch list and signatures, the bytes of files kept beside the rows, and the
 * limits what was built is held against. A file of before has none of it, and the limits the program brings.
 */
export function up(db: WriteDb): void {
  db.exec(closeoutTables);
  for (const { column, value, check } of limits)
    db.exec(`ALTER TABLE settings ADD COLUMN ${column} REAL NOT NULL DEFAULT ${value} CHECK (${check})`);
  liftJournal(db, { settings: (row) => ({ ...row, ...standing }) });
}

const over0 = (key: string, column: string, value: number) => ({
  key,
  column,
  value,
  check: `${column} > 0 AND ${column} < 9e999`,
});

const limits = [
  over0("offsetToleranceM", "offset_tolerance_m", 0.0508),
  over0("readingToleranceDb", "reading_tolerance_db", 1.5),
  {
    key: "markToleranceFrac",
    column: "mark_tolerance_frac",
    value: 0.02,
    check: "mark_tolerance_frac BETWEEN 0 AND 1",
  },
  over0("markToleranceM", "mark_tolerance_m", 0.6096),
  over0("groundMaxOhm", "ground_max_ohm", 25),
  over0("spliceMaxDb", "splice_max_db", 0.2),
  over0("connectionMaxDb", "connection_max_db", 0.5),
  { key: "reflectanceMaxDb", column: "reflectance_max_db", value: -45, check: "abs(reflectance_max_db) < 9e999" },
  over0("sectionMaxDbPerKm", "section_max_db_per_km", 0.4),
  over0("returnLossMinDb", "return_loss_min_db", 32),
];
const standing = Object.fromEntries(limits.map(({ key, value }) => [key, value]));

const id = "id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80)";
const madeId = "id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 300)";
const label = (name: string) => `${name} TEXT NOT NULL CHECK (length(trim(${name})) BETWEEN 1 AND 200)`;
const words = (name: string, most = 2000) => `${name} TEXT NOT NULL CHECK (length(${name}) <= ${most})`;
const ordinal = (name: string) => `${name} INTEGER NOT NULL CHECK (${name} >= 1)`;
const count = (name: string) => `${name} INTEGER NOT NULL CHECK (${name} >= 0)`;
const choice = (name: string, ...choices: string[]) =>
  `${name} TEXT NOT NULL CHECK (${name} IN (${choices.map((one) => `'${one}'`).join(", ")}))`;

const signed = `${label('"by"')}, ${label("at_iso")}`;
const subject = `
  ${choice("kind", "pole", "span", "strandSection", "cable", "closure", "terminal", "port", "drop", "bond")},
  subject_id TEXT NOT NULL CHECK (length(subject_id) BETWEEN 1 AND 80),
  ${count("port")},
  ${words("along_id", 80)}`;
const read = `
  ${subject},
  ${choice(
    "what",
    "offset",
    "slack",
    "mark",
    "markBefore",
    "markAfter",
    "height",
    "power",
    "continuity",
    "resistance",
    "houseTag",
    "portOfDrop",
    "note",
  )},
  ${count("wavelength_nm")},
  "value" REAL CHECK (abs("value") < 9e999),
  ${words("text")},
  ${signed}`;

const closeoutTables = `
  CREATE TABLE milestone (
    ${madeId}, ${subject},
    ${choice("state", "issued", "built", "tested", "accepted")},
    ${signed}
  ) STRICT;
  CREATE TABLE reading (${madeId}, ${read}) STRICT;
  CREATE TABLE packet (
    ${id}, ${ordinal("number")}, ${label("crew")}, ${words("terminal_ids", 20_000)}, ${signed}
  ) STRICT;
  CREATE TABLE rival_reading (
    ${madeId},
    reading_id TEXT NOT NULL CHECK (length(reading_id) BETWEEN 1 AND 300),
    ${read},
    packet_id TEXT NOT NULL REFERENCES packet (id) DEFERRABLE INITIALLY DEFERRED
  ) STRICT;
  CREATE INDEX rival_reading_packet_id ON rival_reading (packet_id);
  CREATE TABLE photo (
    ${madeId}, ${subject},
    ${choice("moment", "built", "before", "after")},
    ${words("caption")}, ${ordinal("width_px")}, ${ordinal("height_px")}, ${label("kept_hash")}, ${signed}
  ) STRICT;
  CREATE TABLE trace (
    ${id}, ${label("file_name")}, ${label("kept_hash")},
    cable_id TEXT REFERENCES cable (id) DEFERRABLE INITIALLY DEFERRED,
    fiber INTEGER CHECK (fiber >= 1),
    ${choice("from_end", "feed", "far")},
    wavelength_nm REAL NOT NULL CHECK (wavelength_nm > 0 AND wavelength_nm < 9e999),
    ${signed}
  ) STRICT;
  CREATE INDEX trace_cable_id ON trace (cable_id);
  CREATE TABLE punch (
    ${madeId}, ${ordinal("number")}, ${subject}, ${label("what")},
    ${words("rule_id", 200)}, ${words("subjects")}, ${words("assigned_to")}, ${words("due_iso")}, ${signed},
    ${words("done_by")}, ${words("done_iso")}, ${words("done_note")}
  ) STRICT;
  CREATE TABLE sign_off (
    ${id}, ${ordinal("number")}, ${choice("stage", "built", "tested", "accepted")}, ${words("role")}, ${words("note")},
    ${label("digest")}, ${signed},
    ${words("reopened_by")}, ${words("reopened_iso")}, ${words("reopen_reason")}
  ) STRICT;
  CREATE TABLE kept_file (
    hash TEXT PRIMARY KEY NOT NULL CHECK (length(hash) = 64),
    bytes BLOB NOT NULL
  ) STRICT;
`;

import type { WriteDb } from "../driver.ts";

export const version = 7;

const surfaces =
  "'road', 'highLoadRoad', 'limitedAccessRoad', 'driveway', 'roadside', 'rail', 'water', 'sailingWater', 'pedestrian', 'field'";

const limited = `
  ${surfaces},
  'dropRoad', 'dropDriveway', 'buildingOver', 'buildingBeside', 'walkedRoofOver',
  'signOver', 'signBeside', 'litSignBeside', 'walkedSignOver',
  'supplyAtPole', 'supplyInSpan', 'neutralAtPole', 'neutralInSpan', 'communicationAtPole', 'communicationInSpan'`;

const basis = ["basis_document", "basis_clause", "basis_edition"]
  .map((name) => `${name} TEXT NOT NULL CHECK (length(${name}) <= 2000),`)
  .concat("basis_mark TEXT NOT NULL CHECK (basis_mark IN ('seen', 'memory', 'practice', 'computed'))")
  .join("\n");

const id = "id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80)";
const refers = (column: string, table: string) =>
  `${column} TEXT NOT NULL REFERENCES ${table} (id) DEFERRABLE INITIALLY DEFERRED`;
const amount = (column: string) => `${column} REAL NOT NULL CHECK (${column} >= 0 AND ${column} < 9e999)`;
const positive = (column: string) => `${column} REAL NOT NULL CHECK (${column} > 0 AND ${column} < 9e999)`;
const figure = (column: string) => `${column} REAL CHECK (abs(${column}) < 9e999)`;

/** Tables whose list of surfaces grows: their columns in order, and the column that refers to a table above. */
const grown = [
  {
    table: "crossing",
    owner: "span_id",
    columns: [
      id,
      refers("span_id", "span"),
      "name TEXT NOT NULL CHECK (length(name) <= 2000)",
      `surface TEXT NOT NULL CHECK (surface IN (${surfaces}))`,
      amount("offset_m"),
      positive("width_m"),
      figure("surface_m"),
    ],
  },
  {
    table: "drop_crossing",
    owner: "living_unit_id",
    columns: [
      id,
      refers("living_unit_id", "living_unit"),
      "name TEXT NOT NULL CHECK (length(name) <= 2000)",
      `surface TEXT NOT NULL CHECK (surface IN (${surfaces}))`,
      amount("from_unit_m"),
      positive("width_m"),
      figure("surface_m"),
    ],
  },
  {
    table: "clearance_limit",
    owner: "clearance_set_id",
    columns: [
      id,
      refers("clearance_set_id", "clearance_set"),
      `surface TEXT NOT NULL CHECK (surface IN (${limited}))`,
      "condition TEXT NOT NULL CHECK (condition IN ('any', 'stringing', 'hot', 'iced'))",
      positive("limit_m"),
      basis,
      `covers_v REAL NOT NULL DEFAULT 0 CHECK (covers_v >= 0 AND covers_v < 9e999)`,
      `more_m_per_v REAL NOT NULL DEFAULT 0 CHECK (more_m_per_v >= 0 AND more_m_per_v < 9e999)`,
    ],
  },
];

/**
 * What a drop may pass over and at what price, and limited-access roads among the surfaces. A file of before names nothing that a drop
 * may not pass: its layouts and findings stay as they were until its owner enters rows or takes a template.
 */
export function up(db: WriteDb): void {
  for (const { table, owner, columns } of grown)
    db.exec(`
      CREATE TABLE ${table}_next (${columns.join(",\n")}) STRICT;
      INSERT INTO ${table}_next SELECT * FROM ${table} ORDER BY rowid;
      DROP TABLE ${table};
      ALTER TABLE ${table}_next RENAME TO ${table};
      CREATE INDEX ${table}_${owner} ON ${table} (${owner});
    `);
  db.exec(`
    CREATE TABLE drop_passing (
      ${id},
      surface TEXT NOT NULL CHECK (surface IN (${surfaces})),
      passing TEXT NOT NULL CHECK (passing IN ('allowed', 'forbidden')),
      ${amount("cost_each")},
      ${basis}
    ) STRICT;
  `);
}

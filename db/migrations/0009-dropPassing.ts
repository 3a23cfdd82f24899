import type { WriteDb } from "../driver.ts";
import { basisColumns } from "./0002/sqlWords.ts";
import { recreate, withWord } from "./recreate.ts";

export const version = 9;

const surfaces = [
  "road",
  "highLoadRoad",
  "limitedAccessRoad",
  "stateHighway",
  "driveway",
  "alongStreet",
  "alongRoad",
  "roadside",
  "rail",
  "trolley",
  "water",
  "sailingWater20",
  "sailingWater200",
  "sailingWater2000",
  "sailingWater",
  "launch20",
  "launch200",
  "launch2000",
  "launch",
  "pedestrian",
  "field",
];

/**
 * What a drop may pass over and at what price, and limited-access roads among the surfaces. A file of before names nothing that a drop
 * may not pass: its layouts and findings stay as they were until its owner enters rows or takes a template.
 */
export function up(db: WriteDb): void {
  for (const table of ["crossing", "drop_crossing", "clearance_limit"])
    recreate(db, table, (sql) => withWord(sql, "highLoadRoad", "limitedAccessRoad"));
  db.exec(`
    CREATE TABLE drop_passing (
      id TEXT PRIMARY KEY NOT NULL CHECK (length(id) BETWEEN 1 AND 80),
      surface TEXT NOT NULL CHECK (surface IN (${surfaces.map((surface) => `'${surface}'`).join(", ")})),
      passing TEXT NOT NULL CHECK (passing IN ('allowed', 'forbidden')),
      cost_each REAL NOT NULL CHECK (cost_each >= 0 AND cost_each < 9e999),
      ${basisColumns}
    ) STRICT;
  `);
}

import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";
import { recreate, withWord } from "./recreate.ts";

export const version = 7;

const moreSurfaces = [
  ["highLoadRoad", "stateHighway"],
  ["driveway", "alongStreet"],
  ["driveway", "alongRoad"],
  ["rail", "trolley"],
  ["water", "sailingWater20"],
  ["water", "sailingWater200"],
  ["water", "sailingWater2000"],
  ["sailingWater", "launch20"],
  ["sailingWater", "launch200"],
  ["sailingWater", "launch2000"],
  ["sailingWater", "launch"],
] as const;

const moreLimits = [
  "dropRoof",
  "buildingUnder",
  "signUnder",
  "litSignUnder",
  "groundedLitSignBeside",
  "chimneyOver",
  "chimneyBeside",
  "equipmentAtPole",
  "bondedEquipmentAtPole",
  "streetLightAtPole",
  "bondedStreetLightAtPole",
  "dripLoopAtPole",
  "climbingSpace",
  "climbingSpaceAtAngle",
  "climbingLevel",
  "guyPair",
  "riserBracket",
];

function withSurfaces(sql: string): string {
  return moreSurfaces.reduce((text, [behind, word]) => withWord(text, behind, word), sql);
}

/**
 * Sailing water by its area, launching areas, lines along streets and roads, state highways, trolley wire, roofs under drops; signs and
 * roofs the line may pass under; street-light brackets with drip loops, cable in the supply space, and what is bonded to our messenger;
 * climbing space; sets that stand on others; limits that are less at the edges. Of what was there every neutral counts as bonded, as it
 * was checked until now.
 */
export function up(db: WriteDb): void {
  recreate(db, "crossing", withSurfaces);
  recreate(db, "settings", withSurfaces);
  recreate(db, "drop_crossing", (sql) => withWord(withSurfaces(sql), "field", "roof"));
  recreate(db, "clearance_limit", (sql) =>
    moreLimits.reduce((text, word) => withWord(text, "walkedSignOver", word), withSurfaces(sql)),
  );
  recreate(db, "structure", (sql) => withWord(withWord(sql, "litSign", "groundedLitSign"), "walkedSign", "chimney"));
  recreate(db, "attachment", (sql) => withWord(withWord(sql, "primary", "supplyFiber"), "streetLight", "dripLoop"));
  recreate(db, "wire_sag", (sql) => withWord(sql, "primary", "supplyFiber"));
  const amount = (name: string) => `REAL NOT NULL DEFAULT 0 CHECK (${name} >= 0 AND ${name} < 9e999)`;
  db.exec(`
    ALTER TABLE clearance_set ADD COLUMN base_set_id TEXT REFERENCES clearance_set (id) DEFERRABLE INITIALLY DEFERRED;
    CREATE INDEX clearance_set_base_set_id ON clearance_set (base_set_id);
    ALTER TABLE clearance_limit ADD COLUMN edge_limit_m ${amount("edge_limit_m")};
    ALTER TABLE clearance_limit ADD COLUMN edge_run_m ${amount("edge_run_m")};
    ALTER TABLE structure ADD COLUMN bottom_m REAL CHECK (bottom_m > 0 AND bottom_m < 9e999);
    ALTER TABLE attachment ADD COLUMN bonded INTEGER NOT NULL DEFAULT 0 CHECK (bonded IN (0, 1));
    UPDATE attachment SET bonded = 1 WHERE kind = 'neutral';
  `);
  liftJournal(db, {
    clearanceSet: (row) => ({ ...row, baseSetId: null }),
    clearanceLimit: (row) => ({ ...row, edgeLimitM: 0, edgeRunM: 0 }),
    structure: (row) => ({ ...row, bottomM: null }),
    attachment: (row) => ({ ...row, bonded: row.kind === "neutral" }),
  });
}

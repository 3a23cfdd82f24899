import type { WriteDb } from "../driver.ts";
import { liftJournal } from "./liftJournal.ts";
import { recreate, withWord } from "./recreate.ts";

export const version = 12;

/**
 * Driveways of dwellings, and what a drop keeps over one on its way to a building too low for more. Every driveway under a drop counts as
 * such, as it was checked until now.
 */
export function up(db: WriteDb): void {
  const withHome = (sql: string) => withWord(sql, "driveway", "homeDriveway");
  for (const table of ["crossing", "settings", "drop_crossing", "drop_passing"]) recreate(db, table, withHome);
  recreate(db, "clearance_limit", (sql) => withWord(withHome(sql), "dropDriveway", "dropLowDriveway"));
  db.exec("UPDATE drop_crossing SET surface = 'homeDriveway' WHERE surface = 'driveway'");
  liftJournal(db, {
    dropCrossing: (row) => (row.surface === "driveway" ? { ...row, surface: "homeDriveway" } : row),
  });
}

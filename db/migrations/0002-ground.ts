import type { WriteDb } from "../driver.ts";
import { groundTables } from "./0002/groundTables.ts";
import { liftJournal } from "./0002/journalRows.ts";
import { limitTables } from "./0002/limitTables.ts";
import { settingsTable } from "./0002/settingsTable.ts";

export const version = 2;

/** Limits by case, strength sets, the ground under the line, structures beside it, guys, and where a standard was read. */
export function up(db: WriteDb): void {
  for (const sql of [limitTables, settingsTable, groundTables]) db.exec(sql);
  liftJournal(db);
}

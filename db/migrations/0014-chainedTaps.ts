import type { WriteDb } from "../driver.ts";
import { recreate, withWord } from "./recreate.ts";

export const version = 14;

/** A third thing a company may do with fiber beyond a cut: the layout chains taps along it. */
export function up(db: WriteDb): void {
  recreate(db, "settings", (sql) => withWord(sql, "reused", "chained"));
}

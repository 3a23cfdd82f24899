import type { Result } from "../core/model/result.ts";
import { brokenReference } from "./brokenReference.ts";
import { sqliteCode, type WriteDb } from "./driver.ts";

/**
 * Runs work that is kept as a whole or not at all: a fault, a broken reference or an error takes everything back.
 *
 * Rows may come in any order, as references are looked at when the work is kept.
 */
export function transact<T>(db: WriteDb, work: () => Result<T>): Result<T> {
  db.exec("BEGIN IMMEDIATE");
  try {
    const done = work();
    if (!done.ok) {
      db.exec("ROLLBACK");
      return done;
    }
    db.exec("COMMIT");
    return done;
  } catch (error) {
    const broken = sqliteCode(error) === "SQLITE_CONSTRAINT_FOREIGNKEY" ? brokenReference(db) : null;
    rollBack(db);
    if (broken) return { ok: false, fault: broken };
    throw error;
  }
}

/** Some errors have ended the transaction already. */
function rollBack(db: WriteDb): void {
  try {
    db.exec("ROLLBACK");
  } catch (error) {
    if (sqliteCode(error) !== "SQLITE_ERROR") throw error;
  }
}

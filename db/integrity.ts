import { fail, ok, type Result } from "../core/model/result.ts";
import { tableNames } from "../core/model/tables.ts";
import { brokenReference } from "./brokenReference.ts";
import { shapeOf } from "./columns.ts";
import type { ReadDb } from "./driver.ts";

const mend = "Restore a backup from the folder beside the file, or an older copy.";

/** Whether pages, constraints and references of a file are whole; reads all of it. */
export function checkWhole(db: ReadDb, path: string): Result<null> {
  const first = db.arrays("PRAGMA integrity_check(1)")[0]?.[0];
  if (first !== "ok") return fail("damaged", `The route file is damaged: ${first}.`, path, mend);
  const broken = brokenReference(db);
  if (broken) return fail("damaged", `The route file is damaged: ${broken.what}`, `${path}, ${broken.where}`, mend);
  return ok(null);
}

/** Whether a file of the newest version has every table and column the model knows. */
export function checkTables(db: ReadDb, path: string): Result<null> {
  for (const table of tableNames) {
    const { name, columns } = shapeOf(table);
    const there = new Set(db.all(`PRAGMA table_info("${name}")`).map((column) => column.name));
    const lost = columns.find((column) => !there.has(column.name));
    if (lost) return fail("damaged", `The route file has lost the column ${lost.name} of ${name}.`, path, mend);
  }
  return ok(null);
}

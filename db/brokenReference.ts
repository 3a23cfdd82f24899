import type { Fault } from "../core/model/result.ts";
import type { ReadDb, SqlValue } from "./driver.ts";

/** The first row that names a row which is not there; null where every reference holds. Reads the whole file. */
export function brokenReference(db: ReadDb): Fault | null {
  const found = db.get("PRAGMA foreign_key_check");
  if (!found) return null;
  const child = String(found.table);
  const column = referringColumn(db, child, found.fkid ?? null);
  const row = db.get(
    `SELECT "${column}" AS named, "${keyOf(child)}" AS id FROM "${child}" WHERE rowid = ?`,
    found.rowid ?? null,
  );
  const named = `${found.parent} ${row?.named}`;
  return {
    code: "broken-reference",
    what: `The ${child} ${row?.id} names the ${named}, which is not there.`,
    where: `${child} ${row?.id}, ${column}`,
    mend: `To take the ${found.parent} away, delete what hangs on it first; else name a ${found.parent} that is there.`,
  };
}

function keyOf(table: string): string {
  return table === "journal" ? "seq" : "id";
}

function referringColumn(db: ReadDb, table: string, foreignKey: SqlValue): string {
  const keys = db.all(`PRAGMA foreign_key_list("${table}")`);
  const key = keys.find(({ id }) => id === foreignKey);
  if (!key) throw new Error(`${table} has no foreign key ${foreignKey}`);
  return String(key.from);
}

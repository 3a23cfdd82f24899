import type { WriteDb } from "../driver.ts";

/**
 * Makes a table anew with a changed definition, its rows and indexes kept: SQLite cannot change a check.
 *
 * For tables no other table refers to. The edit must keep every column, in order.
 *
 * @param edit  the table's definition as it stands, to the one it is to have
 */
export function recreate(db: WriteDb, table: string, edit: (sql: string) => string): void {
  const made = db.all("SELECT type, sql FROM sqlite_schema WHERE tbl_name = ? AND sql IS NOT NULL", table);
  const definition = String(made.find(({ type }) => type === "table")?.sql ?? "");
  const indexes = made.filter(({ type }) => type === "index").map(({ sql }) => String(sql));
  const [head, ...rest] = edit(definition).split("(");
  if (head === undefined || edit(definition) === definition)
    throw new Error(`the definition of ${table} is not as expected`);
  db.exec(`CREATE TABLE "${table}_next" (${rest.join("(")}`);
  db.exec(`INSERT INTO "${table}_next" SELECT * FROM "${table}" ORDER BY rowid`);
  db.exec(`DROP TABLE "${table}"`);
  db.exec(`ALTER TABLE "${table}_next" RENAME TO "${table}"`);
  for (const sql of indexes) db.exec(sql);
}

/** A list of words in a definition with one more behind a word that is there. */
export function withWord(sql: string, behind: string, word: string): string {
  return sql.replace(`'${behind}'`, `'${behind}', '${word}'`);
}

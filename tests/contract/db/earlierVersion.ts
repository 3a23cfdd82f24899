import { type TableName, tableNames } from "../../../core/model/tables.ts";
import { climb } from "../../../db/climb.ts";
import { encodeRow, shapeOf } from "../../../db/columns.ts";
import { openHandle, type WriteDb } from "../../../db/driver.ts";
import { migrations } from "../../../db/migrations/migrations.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { granted, inScratch, opening } from "./scratch.ts";

/**
 * A file of an earlier version with the small route in it.
 *
 * @param later  columns that came after that version, as the file names them
 */
export function withEarlierVersion<T>(version: number, later: readonly string[], work: (db: WriteDb) => T): T {
  return inScratch((path) => {
    const handle = granted(openHandle(path, false, null));
    try {
      granted(climb(handle.db, null, 0, opening.atIso, migrations.slice(0, version)));
      handle.db.exec("PRAGMA foreign_keys = ON; BEGIN");
      for (const table of tableNames) insertAll(handle.db, table, later);
      handle.db.exec("COMMIT");
      return work(handle.db);
    } finally {
      handle.close();
    }
  });
}

function insertAll(db: WriteDb, table: TableName, later: readonly string[]): void {
  const { name, columns } = shapeOf(table);
  const kept = columns.flatMap((column, at) => (later.includes(column.name) ? [] : [{ name: column.name, at }]));
  const names = kept.map((column) => `"${column.name}"`).join(", ");
  for (const row of smallRoute()[table].values()) {
    const values = encodeRow(table, row);
    const sql = `INSERT INTO "${name}" (${names}) VALUES (${kept.map(() => "?").join(", ")})`;
    db.run(sql, ...kept.map(({ at }) => values[at] ?? null));
  }
}

import { fail, ok, type Result } from "../core/model/result.ts";
import { type Route, settingsId } from "../core/model/route.ts";
import { type Row, type TableName, tableNames } from "../core/model/tables.ts";
import { decodeRow, shapeOf } from "./columns.ts";
import type { ReadDb } from "./driver.ts";
import { checkRow } from "./rowCheck.ts";
import { onDisk } from "./sqliteFault.ts";

/** The whole route of a file, every row checked by its schema; the first that does not fit is named in the fault. */
export function loadRoute(db: ReadDb): Result<Route> {
  return onDisk("route file", () => {
    const loaded: [TableName, ReadonlyMap<string, Row<TableName>>][] = [];
    for (const table of tableNames) {
      const rows = loadTable(db, table);
      if (!rows.ok) return rows;
      loaded.push([table, rows.value]);
    }
    const route = Object.fromEntries(loaded) as unknown as Route; // fromEntries cannot keep the keys' types
    if (!route.settings.has(settingsId))
      return fail("damaged", "The route file has lost its settings.", "settings", mend);
    return ok(route);
  });
}

const mend = "Restore a backup from the folder beside the file.";

function loadTable<T extends TableName>(db: ReadDb, table: T): Result<ReadonlyMap<string, Row<T>>> {
  const { columns, selectAll } = shapeOf(table);
  const rows = new Map<string, Row<T>>();
  for (const values of db.arrays(selectAll)) {
    const row = checkRow(table, decodeRow(columns, values), mend);
    if (!row.ok) return row;
    rows.set(row.value.id, row.value);
  }
  return ok(rows);
}

import type { Route } from "../../../core/model/route.ts";
import { type TableName, tableNames } from "../../../core/model/tables.ts";
import { climb } from "../../../db/climb.ts";
import { encodeRow, shapeOf } from "../../../db/columns.ts";
import { openHandle, type WriteDb } from "../../../db/driver.ts";
import { migrations } from "../../../db/migrations/migrations.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { granted, inScratch, opening } from "./scratch.ts";

const sinceVersion7 =
  /^(stateHighway|homeDriveway|dropLowDriveway|along|trolley|sailingWater\d|launch|dropRoof|\w*Under$|groundedLitSign|chimney|equipment|bonded|streetLight|dripLoop|climbing|guyPair|riser)/;

/** The small route without the limits over what no version before 7 knew. */
export function olderRoute(): Route {
  const route = smallRoute();
  const known = [...route.clearanceLimit].filter(([, { surface }]) => !sinceVersion7.test(surface));
  return { ...route, clearanceLimit: new Map(known) };
}

/** Works on a file of an older version with the rows of the older route, without the columns that version lacks. */
export function withVersion<T>(version: number, work: (db: WriteDb) => T): T {
  return inScratch((path) => {
    const handle = granted(openHandle(path, false, null));
    try {
      granted(climb(handle.db, null, 0, opening.atIso, migrations.slice(0, version)));
      handle.db.exec("PRAGMA foreign_keys = ON; BEGIN");
      for (const table of tableNames) insertAll(handle.db, table);
      handle.db.exec("COMMIT");
      return work(handle.db);
    } finally {
      handle.close();
    }
  });
}

function insertAll(db: WriteDb, table: TableName): void {
  const { name, columns } = shapeOf(table);
  const there = new Set(db.all(`PRAGMA table_info("${name}")`).map((column) => column.name));
  const kept = columns.flatMap((column, at) => (there.has(column.name) ? [{ name: column.name, at }] : []));
  const names = kept.map((column) => `"${column.name}"`).join(", ");
  const sql = `INSERT INTO "${name}" (${names}) VALUES (${kept.map(() => "?").join(", ")})`;
  for (const row of olderRoute()[table].values()) {
    const values = encodeRow(table, row);
    db.run(sql, ...kept.map(({ at }) => values[at] ?? null));
  }
}

/** Enters a row's edit into the journal as an older program wrote it. */
export function enterEdit(db: WriteDb, row: object): void {
  db.run(
    "INSERT INTO journal (label, author, at_iso, kind, rows_json) VALUES ('Change', 'Ann', ?, 'edit', ?)",
    opening.atIso,
    JSON.stringify([row]),
  );
}

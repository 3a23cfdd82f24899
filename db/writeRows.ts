import { sameRow } from "../core/edits/sameRow.ts";
import type { Fault } from "../core/model/result.ts";
import { settingsId } from "../core/model/route.ts";
import type { RowChange } from "../core/model/rowChange.ts";
import { decodeRow, encodeRow, shapeOf } from "./columns.ts";
import { type ReadDb, sqliteCode, type WriteDb } from "./driver.ts";
import { checkRow } from "./rowCheck.ts";

/**
 * Writes rows inside a transaction of the caller's, who takes it back when a fault comes.
 *
 * @returns null when all are written; else "conflict" where a `before` no longer holds, "bad-row" where an `after` does not fit
 */
export function writeRows(db: WriteDb, rows: readonly RowChange[]): Fault | null {
  for (const row of rows) {
    const fault = conflict(db, row) ?? writeRow(db, row);
    if (fault) return fault;
  }
  return null;
}

function conflict(db: ReadDb, row: RowChange): Fault | null {
  const { columns, selectOne } = shapeOf(row.table);
  const values = db.arrays(selectOne, row.id)[0];
  if (sameRow(values ? decodeRow(columns, values) : null, row.before)) return null;
  const what = values ? "holds other values than this edit was made on" : "this edit was made on is not in the file";
  return {
    code: "conflict",
    what: `The ${row.table} ${row.id} ${what}.`,
    where: `${row.table} ${row.id}`,
    mend: "Open the file again and make the edit once more.",
  };
}

function writeRow(db: WriteDb, row: RowChange): Fault | null {
  const shape = shapeOf(row.table);
  if (row.after === null) {
    if (row.id === settingsId && row.table === "settings")
      return badRow(row, "A route cannot be without its settings.");
    db.run(shape.remove, row.id);
    return null;
  }
  if (row.after.id !== row.id) return badRow(row, `The ${row.table} ${row.id} cannot be renamed to ${row.after.id}.`);
  const checked = checkRow(row.table, row.after, mend);
  if (!checked.ok) return checked.fault;
  const values = encodeRow(row.table, row.after);
  try {
    if (row.before === null) db.run(shape.insert, ...values);
    else db.run(shape.update, ...values, row.id);
    return null;
  } catch (error) {
    if (sqliteCode(error) !== "SQLITE_CONSTRAINT_CHECK") throw error;
    return badRow(row, `The ${row.table} ${row.id} holds a value the file cannot keep.`);
  }
}

const mend = "Correct the value and try again; nothing was changed.";

function badRow(row: RowChange, what: string): Fault {
  return { code: "bad-row", what, where: `${row.table} ${row.id}`, mend };
}

import { expect, test } from "vitest";
import { type TableName, tableNames } from "../../../core/model/tables.ts";
import { climb } from "../../../db/climb.ts";
import { encodeRow, shapeOf } from "../../../db/columns.ts";
import { openHandle, type WriteDb } from "../../../db/driver.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { migrations } from "../../../db/migrations/migrations.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { granted, inScratch, opening } from "./scratch.ts";

const added = new Set(["at_poles", "strand_at_poles", "differential_db", "reach_m", "through_loss_db", "dead_length"]);

/** A file of version 2 with the small route in it. */
function withSecondVersion<T>(work: (db: WriteDb) => T): T {
  return inScratch((path) => {
    const handle = granted(openHandle(path, false, null));
    try {
      granted(climb(handle.db, null, 0, opening.atIso, migrations.slice(0, 2)));
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
  const kept = columns.flatMap((column, at) => (added.has(column.name) ? [] : [{ name: column.name, at }]));
  const names = kept.map((column) => `"${column.name}"`).join(", ");
  for (const row of smallRoute()[table].values()) {
    const values = encodeRow(table, row);
    const sql = `INSERT INTO "${name}" (${names}) VALUES (${kept.map(() => "?").join(", ")})`;
    db.run(sql, ...kept.map(({ at }) => values[at] ?? null));
  }
}

test("a file of version 2 climbs with every row, its strand clamped at every pole as it was taken before", () => {
  withSecondVersion((db) => {
    granted(climb(db, null, 2, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(smallRoute());
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("an edit of a strand section made in version 2 can still be undone after the climb", () => {
  withSecondVersion((db) => {
    const { atPoles: _later, ...section } = smallRoute().strandSection.get("section-1") ?? { atPoles: "" };
    const rows = [
      { table: "strandSection", id: "section-1", before: { ...section, stringingSagFrac: 0.012 }, after: section },
    ];
    db.run(
      "INSERT INTO journal (label, author, at_iso, kind, rows_json) VALUES ('Change sag', 'Ann', ?, 'edit', ?)",
      opening.atIso,
      JSON.stringify(rows),
    );
    granted(climb(db, null, 2, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).strandSection.get("section-1")).toMatchObject({
      stringingSagFrac: 0.012,
      atPoles: "clamped",
    });
  });
});

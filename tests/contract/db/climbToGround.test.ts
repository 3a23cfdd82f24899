import { expect, test } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import { type Row, type TableName, tableNames } from "../../../core/model/tables.ts";
import { climb } from "../../../db/climb.ts";
import { shapeOf } from "../../../db/columns.ts";
import type { SqlValue } from "../../../db/driver.ts";
import { openHandle, type WriteDb } from "../../../db/driver.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { migrations } from "../../../db/migrations/migrations.ts";
import { olderRoute } from "./olderFile.ts";
import { granted, inScratch, opening } from "./scratch.ts";

type Flat = Readonly<Record<string, SqlValue | boolean>>;

const newTables: readonly TableName[] = [
  "strengthSet",
  "strengthLimit",
  "settingBasis",
  "guy",
  "groundPoint",
  "structure",
  "wireSag",
  "dropCrossing",
];
const limit = {
  id: "limit-road",
  clearanceSetId: "clearance-test",
  surface: "road",
  limitM: 5,
  basisDocument: "test",
  basisClause: "",
  basisEdition: "",
  basisMark: "practice",
};

/** The small route without the limits over what version 1 did not know. */
function fullRoute(): Route {
  const route = olderRoute();
  const isNew = (surface: string) =>
    /^(highLoadRoad|roadside|sailingWater|drop|building|walked|sign|litSign)/.test(surface);
  return {
    ...route,
    clearanceLimit: new Map([...route.clearanceLimit].filter(([, { surface }]) => !isNew(surface))),
  };
}

/** A file of version 1 with the rows of the small route as that version kept them. */
function withFirstVersion<T>(work: (db: WriteDb) => T): T {
  return inScratch((path) => {
    const handle = granted(openHandle(path, false, null));
    try {
      granted(climb(handle.db, null, 0, opening.atIso, migrations.slice(0, 1)));
      const route = fullRoute();
      handle.db.exec("PRAGMA foreign_keys = ON; BEGIN");
      for (const table of tableNames.filter((name) => !newTables.includes(name)))
        for (const row of route[table].values()) insertFirst(handle.db, table, row);
      handle.db.exec("COMMIT");
      return work(handle.db);
    } finally {
      handle.close();
    }
  });
}

function insertFirst(db: WriteDb, table: TableName, row: Row<TableName>): void {
  const known = db.all(`PRAGMA table_info("${shapeOf(table).name}")`).map(({ name }) => String(name));
  const flat: Flat = { ...row, ...(table === "settings" ? { maxStrandFrac: 0.55 } : {}) };
  const values = known.map((name) => {
    const value = flat[name.replace(/_([a-z0-9])/g, (_, letter: string) => letter.toUpperCase())] ?? null;
    return typeof value === "boolean" ? Number(value) : value;
  });
  const columns = known.map((name) => `"${name}"`).join(", ");
  db.run(`INSERT INTO "${shapeOf(table).name}" (${columns}) VALUES (${known.map(() => "?").join(", ")})`, ...values);
}

test("a file of version 1 climbs with every row, its tension limit as a strength set of its own", () => {
  withFirstVersion((db) => {
    granted(climb(db, null, 1, opening.atIso));
    const climbed = granted(loadRoute(db));
    const before = fullRoute();
    for (const table of tableNames.filter((name) => !newTables.includes(name) && name !== "settings"))
      expect([...climbed[table].values()], table).toEqual([...before[table].values()]);
    expect(climbed.settings.get("settings")).toEqual({
      ...before.settings.get("settings"),
      strengthSetId: "strength-own",
      unguyedAngleRad: 0.0872664625997165,
      poleTopGapM: 0.1524,
    });
    expect([...climbed.strengthLimit.values()]).toMatchObject([
      { strengthSetId: "strength-own", part: "strand", condition: "loaded", limitFrac: 0.55, basisMark: "practice" },
    ]);
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("an edit made in version 1 can still be undone after the climb", () => {
  withFirstVersion((db) => {
    const rows = [{ table: "clearanceLimit", id: limit.id, before: { ...limit, limitM: 4.7244 }, after: limit }];
    db.run("UPDATE clearance_limit SET limit_m = 5 WHERE id = ?", limit.id);
    db.run(
      "INSERT INTO journal (label, author, at_iso, kind, rows_json) VALUES ('Change road', 'Ann', ?, 'edit', ?)",
      opening.atIso,
      JSON.stringify(rows),
    );
    granted(climb(db, null, 1, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).clearanceLimit.get(limit.id)).toMatchObject({ limitM: 4.7244, condition: "any" });
  });
});

test("an empty file climbs without a strength set nobody asked for", () => {
  inScratch((path) => {
    const handle = granted(openHandle(path, false, null));
    granted(climb(handle.db, null, 0, opening.atIso));
    expect(handle.db.all("SELECT * FROM strength_set")).toEqual([]);
    handle.close();
  });
});

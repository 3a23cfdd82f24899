import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 5 climbs with every row, its terminals reserving no port", () => {
  withVersion(5, (db) => {
    granted(climb(db, null, 5, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("an edit of a terminal made in version 5 can still be undone after the climb", () => {
  withVersion(5, (db) => {
    const row = smallRoute().terminal.get("terminal-1");
    if (!row) throw new Error("the small route has no terminal");
    const { reservedPortCount: _count, reservedFor: _for, ...after } = row;
    enterEdit(db, { table: "terminal", id: row.id, before: { ...after, pinned: true }, after });
    granted(climb(db, null, 5, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).terminal.get(row.id)).toEqual({ ...row, pinned: true });
  });
});

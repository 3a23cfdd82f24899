import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 11 climbs with every row, its cables pulled in with 600 lbf at most", () => {
  withVersion(11, (db) => {
    granted(climb(db, null, 11, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("an edit of a cable type made in version 11 can still be undone after the climb", () => {
  withVersion(11, (db) => {
    const row = smallRoute().cableType.get("cable-type-48");
    if (!row) throw new Error("the small route has no such cable");
    const { pullN: _pull, ...after } = row;
    enterEdit(db, { table: "cableType", id: row.id, before: { ...after, costPerM: 9 }, after });
    granted(climb(db, null, 11, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).cableType.get(row.id)).toEqual({ ...row, costPerM: 9 });
  });
});

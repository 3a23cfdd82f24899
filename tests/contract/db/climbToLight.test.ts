import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 4 climbs with every row, its classes allowing their own two limits of difference and 20 km", () => {
  withVersion(4, (db) => {
    granted(climb(db, null, 4, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("an edit of an optical class made in version 4 can still be undone after the climb", () => {
  withVersion(4, (db) => {
    const row = olderRoute().opticalClass.get("class-b-plus");
    if (!row) throw new Error("the small route has no optical class");
    const { differentialDb: _difference, reachM: _reach, ...after } = row;
    enterEdit(db, { table: "opticalClass", id: row.id, before: { ...after, minLossDb: 10 }, after });
    granted(climb(db, null, 4, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).opticalClass.get(row.id)).toEqual({ ...row, minLossDb: 10, differentialDb: 18 });
  });
});

import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 5 climbs with every row, checked under no more cases than before", () => {
  withVersion(5, (db) => {
    granted(climb(db, null, 5, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("an edit of the settings made in version 5 can still be undone after the climb", () => {
  withVersion(5, (db) => {
    const row = smallRoute().settings.get("settings");
    if (!row) throw new Error("the small route has no settings");
    const { extremeWindId: _wind, extremeIceId: _ice, workerLoadN: _worker, ...after } = row;
    enterEdit(db, { table: "settings", id: row.id, before: { ...after, dropReachM: 60 }, after });
    granted(climb(db, null, 5, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).settings.get("settings")).toEqual({ ...row, dropReachM: 60 });
  });
});

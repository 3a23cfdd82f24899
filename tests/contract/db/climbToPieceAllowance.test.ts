import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 20 climbs with every row and orders no spare terminals", () => {
  withVersion(20, (db) => {
    granted(climb(db, null, 20, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
  });
});

test("an edit of the settings made in version 20 can still be undone after the climb", () => {
  withVersion(20, (db) => {
    const row = olderRoute().settings.get("settings");
    if (!row) throw new Error("the small route has no settings");
    const { pieceAllowanceFrac: _later, ...after } = row;
    enterEdit(db, { table: "settings", id: row.id, before: { ...after, dropReachM: 60 }, after });
    granted(climb(db, null, 20, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).settings.get("settings")).toEqual({ ...row, dropReachM: 60 });
  });
});

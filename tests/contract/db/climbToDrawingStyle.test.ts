import { expect, test } from "vitest";
import { drawingStyle } from "../../../core/model/drawingStyle.ts";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 19 climbs with every row, its drawings looking as they did", () => {
  withVersion(19, (db) => {
    granted(climb(db, null, 19, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
  });
});

test("an edit of the settings made in version 19 can still be undone after the climb", () => {
  withVersion(19, (db) => {
    const row = olderRoute().settings.get("settings");
    if (!row) throw new Error("the small route has no settings");
    const after = Object.fromEntries(Object.entries(row).filter(([column]) => !(column in drawingStyle)));
    enterEdit(db, { table: "settings", id: row.id, before: { ...after, dropReachM: 60 }, after });
    granted(climb(db, null, 19, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).settings.get("settings")).toEqual({ ...row, dropReachM: 60 });
  });
});

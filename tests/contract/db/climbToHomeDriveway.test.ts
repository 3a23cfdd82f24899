import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

const lane = { id: "lane", livingUnitId: "unit-1", name: "", fromUnitM: 4, widthM: 3, surfaceM: null };

test("a file of version 11 climbs with every row; a driveway under a drop is a residential one, undone edits too", () => {
  withVersion(11, (db) => {
    db.exec("INSERT INTO drop_crossing VALUES ('lane', 'unit-1', '', 'driveway', 4, 3, NULL)");
    const after = { ...lane, surface: "driveway" };
    enterEdit(db, { table: "dropCrossing", id: "lane", before: { ...after, widthM: 5 }, after });
    granted(climb(db, null, 11, opening.atIso));
    const climbed = granted(loadRoute(db));
    expect(climbed.dropCrossing.get("lane")).toEqual({ ...lane, surface: "homeDriveway" });
    expect({ ...climbed, dropCrossing: new Map() }).toEqual(olderRoute());
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).dropCrossing.get("lane")).toEqual({ ...lane, surface: "homeDriveway", widthM: 5 });
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

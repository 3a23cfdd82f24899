import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 5 climbs with every row, and tells of no layout", () => {
  withVersion(5, (db) => {
    granted(climb(db, null, 5, opening.atIso));
    const route = granted(loadRoute(db));
    expect(route).toEqual(olderRoute());
    expect([route.layoutRecord.size, route.unservedUnit.size]).toEqual([0, 0]);
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

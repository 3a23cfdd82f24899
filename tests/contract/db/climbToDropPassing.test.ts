import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { writeChange } from "../../../db/writeChange.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 6 climbs with every row, and names nothing that a drop may not pass", () => {
  withVersion(6, (db) => {
    granted(climb(db, null, 6, opening.atIso));
    const route = granted(loadRoute(db));
    expect(route).toEqual(olderRoute());
    expect(route.dropPassing.size).toBe(0);
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("a climbed file keeps a limited-access road under a span, and lets it be undone", () => {
  withVersion(6, (db) => {
    granted(climb(db, null, 6, opening.atIso));
    const before = smallRoute().crossing.get("crossing-1");
    if (!before) throw new Error("the small route has no crossing");
    const after = { ...before, surface: "limitedAccessRoad" as const };
    const rows = [{ table: "crossing" as const, id: before.id, before, after }];
    granted(writeChange(db, { label: "Change the surface", rows, ...opening }, { kind: "edit" }));
    expect(granted(loadRoute(db)).crossing.get(before.id)).toEqual(after);
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).crossing.get(before.id)).toEqual(before);
  });
});

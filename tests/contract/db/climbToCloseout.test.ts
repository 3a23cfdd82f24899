import { expect, test } from "vitest";
import { closeoutLimits } from "../../../core/model/closeoutRows.ts";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { keepFile, keptFile } from "../../../db/keptFiles.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening, withFile } from "./scratch.ts";

test("a file of version 16 climbs with every row, nothing of it built", () => {
  withVersion(16, (db) => {
    granted(climb(db, null, 16, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
  });
});

test("an edit of the settings made in version 16 can still be undone after the climb", () => {
  withVersion(16, (db) => {
    const row = olderRoute().settings.get("settings");
    if (!row) throw new Error("the small route has no settings");
    const after = Object.fromEntries(Object.entries(row).filter(([column]) => !(column in closeoutLimits)));
    enterEdit(db, { table: "settings", id: row.id, before: { ...after, dropReachM: 60 }, after });
    granted(climb(db, null, 16, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).settings.get("settings")).toEqual({ ...row, dropReachM: 60 });
  });
});

test("bytes are kept once, by their hash, and read again as they were", () => {
  withFile(olderRoute(), ({ db }) => {
    const bytes = new Uint8Array([0, 1, 2, 255]);
    const hash = keepFile(db, bytes);
    expect(keepFile(db, bytes)).toBe(hash);
    expect(hash).toBe("3d1f57c984978ef98a18378c8166c1cb8ede02c03eeb6aee7e2f121dfeee3e56");
    expect([...(keptFile(db, hash) ?? [])]).toEqual([...bytes]);
    expect(keptFile(db, "0".repeat(64))).toBeNull();
  });
});

import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 6 climbs with every row, every neutral bonded as it was checked before", () => {
  withVersion(6, (db) => {
    granted(climb(db, null, 6, opening.atIso));
    const climbed = granted(loadRoute(db));
    expect(climbed).toEqual(olderRoute());
    for (const { kind, bonded } of climbed.attachment.values()) expect(bonded).toBe(kind === "neutral");
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("after the climb the file takes what it refused before", () => {
  withVersion(6, (db) => {
    const edits = [
      "UPDATE crossing SET surface = 'launch200'",
      "UPDATE settings SET ground_surface = 'alongRoad'",
      "UPDATE clearance_limit SET surface = 'dripLoopAtPole' WHERE surface = 'field'",
      "UPDATE attachment SET kind = 'dripLoop' WHERE kind = 'communication'",
    ];
    for (const edit of edits) expect(() => db.exec(edit), edit).toThrow("CHECK");
    granted(climb(db, null, 6, opening.atIso));
    for (const edit of edits) expect(() => db.exec(edit), edit).not.toThrow();
    expect(() => db.exec("UPDATE crossing SET surface = 'roof'")).toThrow("CHECK");
  });
});

test("an edit of a neutral made in version 6 can still be undone after the climb", () => {
  withVersion(6, (db) => {
    const row = olderRoute().attachment.get("neutral-2");
    if (!row) throw new Error("the small route has no neutral");
    const { bonded: _bonded, ...after } = row;
    enterEdit(db, { table: "attachment", id: row.id, before: { ...after, heightM: 7 }, after });
    granted(climb(db, null, 6, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).attachment.get(row.id)).toEqual({ ...row, heightM: 7 });
  });
});

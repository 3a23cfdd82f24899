import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { redo, undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { revisionOf } from "../../fixtures/route/revisionRow.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

const insert = 'INSERT INTO revision (id, letter, date_iso, "by", checked_by, reason) VALUES (?, ?, ?, ?, ?, ?)';

test("a file of version 14 climbs with every row, its revisions numbered by their dates and approved by nobody", () => {
  withVersion(14, (db) => {
    for (const { id, letter, dateIso, by, checkedBy, reason } of [revisionOf("B", 2), revisionOf("A", 1)])
      db.run(insert, id, letter, dateIso, by, checkedBy, reason);
    granted(climb(db, null, 14, opening.atIso));
    const { revision, ...rest } = granted(loadRoute(db));
    const { revision: _none, ...older } = olderRoute();
    expect(rest).toEqual(older);
    expect([...revision.values()]).toEqual([revisionOf("B", 2), revisionOf("A", 1)]);
  });
});

test("a revision issued in version 14 can still be taken back and issued again after the climb", () => {
  withVersion(14, (db) => {
    const { id, letter, dateIso, by, checkedBy, reason } = revisionOf("A", 1);
    db.run(insert, id, letter, dateIso, by, checkedBy, reason);
    enterEdit(db, {
      table: "revision",
      id,
      before: null,
      after: { id, letter, dateIso, by, checkedBy, reason },
    });
    granted(climb(db, null, 14, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).revision.size).toBe(0);
    granted(redo(db, opening));
    expect([...granted(loadRoute(db)).revision.values()]).toEqual([revisionOf("A", 1)]);
  });
});

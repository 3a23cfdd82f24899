import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 2 climbs with every row, its strand clamped at every pole as it was taken before", () => {
  withVersion(2, (db) => {
    granted(climb(db, null, 2, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("an edit of a strand section made in version 2 can still be undone after the climb", () => {
  withVersion(2, (db) => {
    const { atPoles: _later, ...section } = olderRoute().strandSection.get("section-1") ?? { atPoles: "" };
    const before = { ...section, stringingSagFrac: 0.012 };
    enterEdit(db, { table: "strandSection", id: "section-1", before, after: section });
    granted(climb(db, null, 2, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).strandSection.get("section-1")).toMatchObject({
      stringingSagFrac: 0.012,
      atPoles: "clamped",
    });
  });
});

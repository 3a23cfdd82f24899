import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { withEarlierVersion } from "./earlierVersion.ts";
import { granted, opening } from "./scratch.ts";

const columns = ["differential_db", "reach_m", "through_loss_db", "dead_length"];

test("a file of version 3 climbs with every row, its classes allowing their own two limits of difference and 20 km", () => {
  withEarlierVersion(3, columns, (db) => {
    granted(climb(db, null, 3, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(smallRoute());
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("an edit of an optical class made in version 3 can still be undone after the climb", () => {
  withEarlierVersion(3, columns, (db) => {
    const row = smallRoute().opticalClass.get("class-b-plus");
    if (!row) throw new Error("the small route has no optical class");
    const { differentialDb: _difference, reachM: _reach, ...after } = row;
    const rows = [{ table: "opticalClass", id: row.id, before: { ...after, minLossDb: 10 }, after }];
    db.run(
      "INSERT INTO journal (label, author, at_iso, kind, rows_json) VALUES ('Change class', 'Ann', ?, 'edit', ?)",
      opening.atIso,
      JSON.stringify(rows),
    );
    granted(climb(db, null, 3, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).opticalClass.get(row.id)).toEqual({ ...row, minLossDb: 10, differentialDb: 18 });
  });
});

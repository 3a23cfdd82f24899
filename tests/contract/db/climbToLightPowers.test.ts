import { expect, test } from "vitest";
import { powerColumns } from "../../../core/model/catalogueRows.ts";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

const powers: ReadonlySet<string> = new Set(powerColumns);

function classRow() {
  const row = smallRoute().opticalClass.get("class-b-plus");
  if (!row) throw new Error("the small route has no optical class");
  return row;
}

/** The class as a file of version 6 holds it. */
function olderRow(): object {
  return Object.fromEntries(Object.entries(classRow()).filter(([column]) => !powers.has(column)));
}

test("a file of version 6 climbs with every row; the powers of a company's own class are not known", () => {
  withVersion(6, (db) => {
    granted(climb(db, null, 6, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
    expect(db.all("PRAGMA foreign_key_check")).toEqual([]);
  });
});

test("a shipped class gets the powers the program ships", () => {
  withVersion(6, (db) => {
    db.exec(`
      BEGIN;
      UPDATE settings SET optical_class_id = 'gpon-b-plus';
      UPDATE feed SET optical_class_id = 'gpon-b-plus';
      UPDATE optical_class SET id = 'gpon-b-plus';
      COMMIT;
    `);
    granted(climb(db, null, 6, opening.atIso));
    expect(granted(loadRoute(db)).opticalClass.get("gpon-b-plus")).toMatchObject({
      hubLaunchLeastDbm: 1.5,
      hubLaunchMostDbm: 5,
      unitReceiveLeastDbm: -27,
      hubReceiveMostDbm: -8,
    });
  });
});

test("an edit of an optical class made in version 6 can still be undone after the climb", () => {
  withVersion(6, (db) => {
    const after = olderRow();
    enterEdit(db, { table: "opticalClass", id: "class-b-plus", before: { ...after, minLossDb: 10 }, after });
    granted(climb(db, null, 6, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).opticalClass.get("class-b-plus")).toEqual({
      ...classRow(),
      minLossDb: 10,
    });
  });
});

import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

const asShipped = "UPDATE clearance_limit SET id = 'nesc-supplyAtPole' WHERE id = 'limit-supplyAtPole'";

test("a file of version 3 climbs with every row: limits against supply cover 8.7 kV, and say no more than they did", () => {
  withVersion(3, (db) => {
    granted(climb(db, null, 3, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
  });
});

test("the limit against supply that was shipped asks for 0.4 in more a kV after the climb, and one a company changed does not", () => {
  const climbed = (sql: string) =>
    withVersion(3, (db) => {
      db.exec(asShipped);
      db.exec(sql);
      granted(climb(db, null, 3, opening.atIso));
      return granted(loadRoute(db)).clearanceLimit.get("nesc-supplyAtPole");
    });
  expect(climbed("SELECT 1")).toMatchObject({ coversV: 8700, moreMPerV: 0.00001016 });
  const changed = climbed("UPDATE clearance_limit SET limit_m = 1.2 WHERE id = 'nesc-supplyAtPole'");
  expect(changed).toMatchObject({ coversV: 8700, moreMPerV: 0 });
});

test("an edit of the shipped limit made in version 3 can still be undone after the climb", () => {
  withVersion(3, (db) => {
    db.exec(asShipped);
    db.exec("UPDATE clearance_limit SET limit_m = 1.2 WHERE id = 'nesc-supplyAtPole'");
    const shipped = olderRoute().clearanceLimit.get("limit-supplyAtPole");
    const { coversV: _covers, moreMPerV: _more, ...before } = { coversV: 0, moreMPerV: 0, ...shipped };
    const row = { ...before, id: "nesc-supplyAtPole" };
    enterEdit(db, { table: "clearanceLimit", id: row.id, before: row, after: { ...row, limitM: 1.2 } });
    granted(climb(db, null, 3, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).clearanceLimit.get(row.id)).toMatchObject({ limitM: 1.016, moreMPerV: 0.00001016 });
  });
});

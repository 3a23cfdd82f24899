import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

const clamp = "('clamp', 'Clamp', 'piece', 'pole', 1, 9, '', '', '', '', 'practice')";

test("a file of version 21 keeps the anchor its bill counted as a row of its hardware, without a price", () => {
  withVersion(21, (db) => {
    db.exec(`INSERT INTO hardware VALUES ${clamp}`);
    granted(climb(db, null, 21, opening.atIso));
    const { hardware, ...rest } = granted(loadRoute(db));
    expect([...hardware.values()].map(({ id, per, quantity, cost }) => [id, per, quantity, cost])).toEqual([
      ["clamp", "pole", 1, 9],
      ["hardware-anchor", "guy", 1, 0],
    ]);
    expect({ ...rest, hardware: new Map() }).toEqual(olderRoute());
  });
});

test("a file of version 21 without any hardware climbs with every row and gets none", () => {
  withVersion(21, (db) => {
    granted(climb(db, null, 21, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
  });
});

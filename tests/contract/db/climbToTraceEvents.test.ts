import { expect, test } from "vitest";
import { climb } from "../../../db/climb.ts";
import { undo } from "../../../db/history.ts";
import { loadRoute } from "../../../db/loadRoute.ts";
import { spareTrace } from "../../fixtures/route/tracedRoute.ts";
import { enterEdit, olderRoute, withVersion } from "./olderFile.ts";
import { granted, opening } from "./scratch.ts";

test("a file of version 17 climbs with every row, and no trace shows anything", () => {
  withVersion(17, (db) => {
    granted(climb(db, null, 17, opening.atIso));
    expect(granted(loadRoute(db))).toEqual(olderRoute());
  });
});

test("a trace removed in version 17 comes back by undo with how it was taken at what is usual", () => {
  withVersion(17, (db) => {
    const since = {
      takenIso: "",
      groupIndex: 1.468,
      pulseNs: 100,
      spacingM: 1,
      leadM: null,
      totalLossDb: null,
      returnLossDb: null,
    };
    const before = Object.fromEntries(Object.entries(spareTrace).filter(([column]) => !(column in since)));
    enterEdit(db, { table: "trace", id: spareTrace.id, before, after: null });
    granted(climb(db, null, 17, opening.atIso));
    granted(undo(db, opening));
    expect(granted(loadRoute(db)).trace.get(spareTrace.id)).toEqual({ ...before, ...since });
  });
});

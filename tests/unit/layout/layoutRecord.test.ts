import { describe, expect, test } from "vitest";
import { routeWith } from "../../../core/layout/rowSet.ts";
import { runLayout } from "../../../core/layout/runLayout.ts";
import type { Route } from "../../../core/model/route.ts";
import { limitedWatch } from "../../../core/placement/limitedWatch.ts";
import { standingRecord } from "../../../core/plant/layoutStanding.ts";
import { strungTown } from "../../fixtures/layout/townRoute.ts";
import { changed } from "../../fixtures/route/buildRoute.ts";

const town = () => strungTown({ poleCount: 12, spanM: 30, unitsPerSpan: 9 });

/** A clock that stands still: steps alone count. */
function laid(route: Route, stepLimit: number, isStopped = () => false) {
  const search = limitedWatch({ stepLimit, timeLimitS: 1 }, () => 0, isStopped);
  const layout = runLayout(route, { search });
  if (!layout.ok) throw new Error(layout.fault.what);
  return { ...layout.value, route: routeWith(route, layout.value.rows) };
}

test("a layout let run to its end is kept with cost and bound equal", () => {
  const { route, summary } = laid(town(), 1e6);
  expect(standingRecord(route)).toMatchObject({
    ended: "proven",
    terminalCount: route.terminal.size,
    servedCount: route.livingUnit.size,
    cost: summary.cost,
    bound: summary.cost,
  });
});

test("a search ended by its steps serves everyone as well, says how far its cost may be from the cheapest, and comes out the same again", () => {
  const once = laid(town(), 250);
  const record = standingRecord(once.route);
  expect(record).toMatchObject({ ended: "work", stepCount: 250, unservedCount: 0 });
  expect(record?.bound).toBeLessThan(record?.cost ?? 0);
  expect(laid(town(), 250).rows).toEqual(once.rows);
});

test("what was stopped by hand comes out the same once more when it is given the steps it took", () => {
  let asked = 0;
  const stopped = laid(town(), 1e6, () => {
    asked += 1;
    return asked > 321;
  });
  const record = standingRecord(stopped.route);
  expect(record?.ended).toBe("stopped");
  const again = laid(town(), record?.stepCount ?? 0);
  expect({ ...standingRecord(again.route), ended: "stopped" }).toEqual(record);
  expect([...again.route.terminal.values()]).toEqual([...stopped.route.terminal.values()]);
});

describe("a bound no longer stands", () => {
  const done = laid(town(), 250).route;
  test.each<[string, (route: Route) => Route]>([
    ["once a drop may be shorter", (r) => changed(r, "settings", "settings", { dropReachM: 50 })],
    ["once a living unit stands elsewhere", (r) => changed(r, "livingUnit", "unit-1", { eastM: -3 })],
    ["once a terminal was moved by hand", (r) => changed(r, "terminal", "terminal-1", { offsetM: 5 })],
    ["once nothing may hang beside a pole", (r) => changed(r, "pole", "M-5", { terminalAllowed: false })],
    ["once a terminal is pinned", (r) => changed(r, "terminal", "terminal-1", { pinned: true })],
    ["once a price is another", (r) => changed(r, "dropType", "drop-flat", { costPerM: 9 })],
  ])("%s", (_, change) => {
    expect(standingRecord(done)).not.toBeNull();
    expect(standingRecord(change(done))).toBeNull();
  });
});

test("a note on a pole, or its height, leaves the bound as it is", () => {
  const done = laid(town(), 250).route;
  expect(standingRecord(changed(done, "pole", "M-2", { note: "leans", aboveGroundM: 12 }))).not.toBeNull();
});

test("where only one cable is laid out nothing is kept of the whole", () => {
  const done = laid(town(), 250).route;
  const part = runLayout(done, { cableIds: ["cable-1"] });
  if (!part.ok) throw new Error(part.fault.what);
  expect(routeWith(done, part.value.rows).layoutRecord.size).toBe(0);
});

test("who is not served is kept with the reason, and no longer once served", () => {
  const far = changed(town(), "livingUnit", "unit-1", { northM: -900 });
  const left = laid(far, 50).route;
  expect([...left.unservedUnit.values()]).toEqual([
    { id: "unit-1", livingUnitId: "unit-1", kind: "reach", reason: "No pole side on a cable lies within drop reach." },
  ]);
  const near = laid(changed(left, "livingUnit", "unit-1", { northM: -20 }), 50).route;
  expect(near.unservedUnit.size).toBe(0);
});

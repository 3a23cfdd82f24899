import { describe, expect, test } from "vitest";
import { routeWith } from "../../../core/layout/rowSet.ts";
import { runLayout } from "../../../core/layout/runLayout.ts";
import type { Route } from "../../../core/model/route.ts";
import { bareTown, strung, strungTown } from "../../fixtures/layout/townRoute.ts";
import { changed, withRows } from "../../fixtures/route/buildRoute.ts";

const branched = { poleCount: 6, laterals: [{ atPole: 3, poleCount: 4 }], unitsPerSpan: 5 };

function laid(route: Route, cableIds?: readonly string[]) {
  const layout = runLayout(route, cableIds ? { cableIds } : {});
  if (!layout.ok) throw new Error(layout.fault.what);
  return { ...layout.value, route: routeWith(route, layout.value.rows) };
}

test("terminals are named along the main cable from the feed end, then along the laterals", () => {
  const { route } = laid(strungTown(branched));
  const terminals = [...route.terminal.values()];
  expect(terminals.map((one) => one.name)).toEqual(terminals.map((_, index) => `T-${index + 1}`));
  expect(terminals.map((one) => one.id)).toEqual(terminals.map((_, index) => `terminal-${index + 1}`));
  expect(terminals.map((one) => one.cableId)).toEqual(terminals.map((one) => one.cableId).toSorted());
});

test("a new terminal takes neither the name nor the id of one that is pinned", () => {
  const first = laid(strungTown(branched)).route;
  const pinned = changed(first, "terminal", "terminal-2", { pinned: true, name: "T-1" });
  const { route } = laid(pinned);
  const names = [...route.terminal.values()].map((one) => one.name);
  expect(new Set(names).size).toBe(names.length);
  expect(route.terminal.get("terminal-2")?.name).toBe("T-1");
});

test("a unit with a drop keeps that drop's row", () => {
  const first = laid(strungTown(branched)).route;
  const drop = [...first.drop.values()][0];
  if (!drop) throw new Error("nobody is served");
  const noted = new Map(first.drop);
  noted.delete(drop.id);
  noted.set("my-drop", { ...drop, id: "my-drop" });
  expect(laid({ ...first, drop: noted }).rows).toEqual([]);
});

describe("who cannot be served is told why", () => {
  test("out of drop reach", () => {
    const far = changed(strungTown(branched), "livingUnit", "unit-1", { northM: -900 });
    expect(laid(far).unserved).toEqual([
      { livingUnitId: "unit-1", kind: "reach", reason: "No pole side on a cable lies within drop reach." },
    ]);
  });

  test("only forbidden poles in reach", () => {
    const town = strungTown({ ...branched, poleCount: 3, laterals: [], settings: { dropReachM: 20 } });
    const forbidden = [...town.pole.keys()].reduce((r, id) => changed(r, "pole", id, { terminalAllowed: false }), town);
    const unserved = laid(forbidden).unserved;
    expect(unserved.filter((one) => one.kind === "forbidden").length).toBeGreaterThan(0);
    expect(unserved.map((one) => one.kind)).not.toContain("capacity");
    expect(unserved.find((one) => one.kind === "forbidden")?.reason).toContain("no terminal may hang beside pole M");
  });

  test("more units than ports in reach", () => {
    const town = strungTown({ poleCount: 2, unitsPerSpan: 40 });
    const { unserved, summary } = laid(town);
    expect(summary.usedPortCount).toBe(30);
    expect(unserved.map((one) => one.kind)).toEqual(Array.from({ length: 10 }, () => "capacity"));
  });

  test("too few fibers in the cable, naming the smallest that fits", () => {
    const town = strung(bareTown({ poleCount: 20, unitsPerSpan: 6 }), "cable-type-12");
    const { unserved, route } = laid(town);
    expect(unserved[0]).toMatchObject({ kind: "fibers" });
    expect(unserved[0]?.reason).toContain("Cable M has 12 fibers for");
    expect(unserved[0]?.reason).toContain("the smallest that fits is 48 fibers");
    expect(route.fiberUse.size).toBe(10);
  });

  test("a main cable too small for its lateral gives up terminals until the rest is lit", () => {
    const town = strung(
      bareTown({ poleCount: 14, laterals: [{ atPole: 10, poleCount: 13 }], unitsPerSpan: 6 }),
      "cable-type-12",
    );
    const { unserved, route } = laid(town);
    expect(new Set(unserved.map((one) => one.kind))).toEqual(new Set(["fibers"]));
    const own = [...route.fiberUse.values()].filter((one) => one.cableId === "cable-2");
    const through = [...route.fiberUse.values()].filter((one) => one.lateralCableId === "cable-2");
    expect(own.length).toBeGreaterThan(0);
    expect(through.map((one) => one.lateralFiber).sort()).toEqual(own.map((one) => one.fiber).sort());
  });
});

test("where the best side is taken the terminal says why it hangs elsewhere", () => {
  const town = strungTown({ poleCount: 3, unitsPerSpan: 4 });
  const forbidden = changed(town, "pole", "M-2", { terminalAllowed: false });
  const reasons = [...laid(forbidden).route.terminal.values()].map((one) => one.reason).filter((one) => one !== "");
  expect(reasons.length).toBeGreaterThan(0);
  expect(reasons[0]).toMatch(
    /^First choice, pole M2 toward pole M[13]: no terminal may hang beside pole M2; hung at pole/,
  );
});

test("laying out the lateral alone leaves the main cable's terminals, drops and fibers", () => {
  const first = laid(strungTown(branched)).route;
  const unit = { id: "new", address: "99 Town Rd", eastM: 90, northM: 100, kind: "home" as const };
  const more = withRows(first, "livingUnit", [{ ...unit, building: "", attachHeightM: null, groundM: null, note: "" }]);
  const { route, rows } = laid(more, ["cable-2"]);
  expect([...route.drop.values()].some((one) => one.livingUnitId === "new")).toBe(true);
  for (const row of rows)
    if (row.table === "terminal") expect(row.after?.cableId ?? row.before?.cableId).toBe("cable-2");
  const onMain = (one: Route) => [...one.terminal.values()].filter((terminal) => terminal.cableId === "cable-1");
  expect(onMain(route)).toEqual(onMain(first));
});

test("hub outputs are added when the ones there are full", () => {
  const town = strungTown(branched);
  const small = [...town.feed.keys()].reduce((r, id) => changed(r, "feed", id, { hubSplitCount: 1 }), town);
  const { route, summary } = laid(small);
  expect(summary.addedFeedCount).toBeGreaterThan(0);
  for (const one of route.fiberUse.values()) if (one.cableId === "cable-1") expect(one.feedId).not.toBeNull();
});

test("a reserved and a dead fiber are never given", () => {
  const town = strungTown(branched);
  const none = {
    terminalId: null,
    splitterId: null,
    closureId: null,
    lateralCableId: null,
    lateralFiber: null,
    feedId: null,
  };
  const held = withRows(town, "fiberUse", [
    { id: "held-1", cableId: "cable-1", fiber: 1, purpose: "reserved", ...none },
    { id: "dead-2", cableId: "cable-1", fiber: 2, purpose: "dead", ...none },
  ]);
  const route = laid({
    ...held,
    fiberUse: new Map([...held.fiberUse].filter(([id]) => id === "held-1" || id === "dead-2")),
  }).route;
  const given = [...route.fiberUse.values()].filter((one) => one.cableId === "cable-1" && one.purpose !== "reserved");
  expect(given.filter((one) => one.fiber <= 2).map((one) => one.id)).toEqual(["dead-2"]);
});

test("a layout is refused where there is no cable, no such cable, or no port beside the spares", () => {
  expect(runLayout(bareTown(branched))).toMatchObject({ ok: false, fault: { code: "no-cable" } });
  expect(runLayout(strungTown(branched), { cableIds: ["x"] })).toMatchObject({
    ok: false,
    fault: { code: "missing-row" },
  });
  const spare = strungTown(branched);
  expect(runLayout(changed(spare, "settings", "settings", { sparePortCount: 16 }))).toMatchObject({
    ok: false,
    fault: { code: "no-model" },
  });
});

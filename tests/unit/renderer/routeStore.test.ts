import { expect, test } from "vitest";
import type { EditReply } from "../../../core/contract/contract.ts";
import { spanSag } from "../../../core/plant/spanSag.ts";
import { openRouteStore } from "../../../renderer/app/routeStore.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { asRead } from "./windowOn.ts";

const nothingDone = { undo: null, redo: null };

function opened() {
  const store = openRouteStore();
  store.open("route-1", asRead(smallRoute(), nothingDone));
  return store;
}

function lengthen(from: number, to: number): EditReply {
  const span = smallRoute().span.get("span-1");
  if (!span) throw new Error("the small route has no first span");
  return {
    label: "Set span length",
    rows: [{ table: "span", id: span.id, before: { ...span, lengthM: from }, after: { ...span, lengthM: to } }],
    history: { undo: "Set span length", redo: null },
    gone: [],
    found: [],
  };
}

test("a route read comes in row for row", () => {
  expect(opened().get()?.route).toEqual(smallRoute());
});

test("an edit changes its rows and the figures that lean on them, and keeps every other table as it was", () => {
  const store = opened();
  const before = store.get();
  if (!before) throw new Error("no route is open");
  const sagBefore = spanSag(before.plant, "span-1");
  const after = store.take(lengthen(45, 60));
  if (!after.ok) throw new Error(after.fault.what);
  expect(after.value.route.span.get("span-1")?.lengthM).toBe(60);
  expect(spanSag(after.value.plant, "span-1")).not.toEqual(sagBefore);
  expect(after.value.route.pole).toBe(before.route.pole);
  expect(after.value.history.undo).toBe("Set span length");
});

test("an edit that comes as reply and as event is taken once", () => {
  const store = opened();
  store.take(lengthen(45, 60));
  const again = store.take(lengthen(45, 60));
  expect(again.ok).toBe(true);
  expect(store.get()?.route.span.get("span-1")?.lengthM).toBe(60);
});

test("an edit made on another state is refused and changes nothing", () => {
  const store = opened();
  const refused = store.take(lengthen(44, 60));
  expect(refused.ok ? null : refused.fault.code).toBe("conflict");
  expect(store.get()?.route.span.get("span-1")?.lengthM).toBe(45);
});

test("a row that breaks its table's schema keeps the whole route out", () => {
  const read = asRead(smallRoute(), nothingDone);
  const poles = (read.tables.pole ?? []).map((pole, i) => (i === 0 ? { ...pole, eastM: "far" } : pole));
  const store = openRouteStore();
  const refused = store.open("route-1", { ...read, tables: { ...read.tables, pole: poles } });
  expect(refused.ok ? null : refused.fault.code).toBe("bad-row");
  expect(store.get()).toBeNull();
});

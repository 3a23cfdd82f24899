import { expect, test } from "vitest";
import { openNearIndex } from "../../../core/layout/nearIndex.ts";
import { compareNatural } from "../../../core/layout/order.ts";
import { inWriteOrder, rowDifferences } from "../../../core/layout/rowSet.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

test("tags come in the order people count", () => {
  expect(["T-10", "T-2", "A", "T-2a", "T-1"].sort(compareNatural)).toEqual(["A", "T-1", "T-2", "T-2a", "T-10"]);
});

test("a near index finds just what measuring every distance finds", () => {
  const points = Array.from({ length: 200 }, (_, n) => ({ eastM: (n * 37) % 211, northM: -((n * 53) % 197) }));
  const from = { eastM: 100, northM: -90 };
  const index = openNearIndex(points, 40);
  const measured = points.flatMap((one, n) => (Math.hypot(one.eastM - 100, one.northM + 90) <= 40 ? [n] : []));
  expect(index.near(from).map((one) => one.index)).toEqual(measured);
  expect(() => openNearIndex(points, Number.NaN)).toThrow(RangeError);
});

test("rows that are already so give no edit; the others say what was there", () => {
  const [one, two] = [...smallRoute().terminal.values()];
  if (!one || !two) throw new Error("no terminals");
  const named = { ...two, name: "T9" };
  expect(rowDifferences("terminal", [one, two], [{ ...one }, named])).toEqual([
    { table: "terminal", id: two.id, before: two, after: named },
  ]);
});

test("what is added comes parents first and what goes comes children first", () => {
  const route = smallRoute();
  const gone = (["terminal", "drop"] as const).flatMap((table) =>
    rowDifferences(table, [...route[table].values()], []),
  );
  const added = (["drop", "terminal"] as const).flatMap((table) =>
    rowDifferences(table, [], [...route[table].values()]),
  );
  expect([...new Set(inWriteOrder(gone).map((row) => row.table))]).toEqual(["drop", "terminal"]);
  expect([...new Set(inWriteOrder(added).map((row) => row.table))]).toEqual(["terminal", "drop"]);
});

import { expect, test } from "vitest";
import { openPlant } from "../../../../core/plant/plant.ts";
import { kindOf } from "../../../../renderer/tables/kinds.ts";
import { rowsShown, valueCounts } from "../../../../renderer/tables/rowsShown.ts";
import {
  filteredBy,
  movedColumn,
  plainLayout,
  shownColumns,
  sortedBy,
} from "../../../../renderer/tables/tableLayout.ts";
import { changed, smallRoute } from "../../../fixtures/route/buildRoute.ts";

const route = changed(changed(smallRoute(), "pole", "pole-1", { owner: "B", order: 10 }), "pole", "pole-2", {
  owner: "A",
  order: 9,
});
const given = { plant: openPlant(route), units: "us" as const };
const { columns } = kindOf("pole");
const ids = ["pole-1", "pole-2"];

test("names sort by their numbers, figures as figures, and a second key settles what the first leaves", () => {
  const byOrder = rowsShown(ids, columns, sortedBy(plainLayout, "order", false), given);
  expect(byOrder).toEqual(["pole-2", "pole-1"]);
  const two = sortedBy(sortedBy(plainLayout, "terminalAllowed", false), "owner", true);
  expect(rowsShown(ids, columns, two, given)).toEqual(["pole-2", "pole-1"]);
});

test("pressing a heading sorts up, down, and not at all", () => {
  const up = sortedBy(plainLayout, "tag", false);
  const down = sortedBy(up, "tag", false);
  expect([up.sorts, down.sorts, sortedBy(down, "tag", false).sorts]).toEqual([
    [{ column: "tag", down: false }],
    [{ column: "tag", down: true }],
    [],
  ]);
});

test("a filter takes part of a text, a comparison, or chosen values", () => {
  const filtered = (text: string, values: readonly string[] | null) =>
    rowsShown(ids, columns, filteredBy(plainLayout, { column: "order", text, values }), given);
  expect(filtered(">9", null)).toEqual(["pole-1"]);
  expect(filtered("", ["9"])).toEqual(["pole-2"]);
  expect(filtered("", null)).toEqual(ids);
});

test("the values of a column come with how many rows show each", () => {
  const owner = columns.find((one) => one.key === "owner");
  if (!owner) throw new Error("no owner column");
  expect(valueCounts(["pole-1", "pole-1", "pole-2"], owner, given)).toEqual([
    { text: "B", count: 2 },
    { text: "A", count: 1 },
  ]);
});

test("a column moves among the others, a hidden one is left out, the first stays first", () => {
  const layout = movedColumn(columns, { ...plainLayout, hidden: ["groundM"] }, "owner", -1);
  const keys = shownColumns(columns, layout).map((one) => one.key);
  expect(keys[0]).toBe("tag");
  expect(keys).not.toContain("groundM");
  expect(layout.order.indexOf("owner")).toBeLessThan(layout.order.indexOf("groundM"));
});

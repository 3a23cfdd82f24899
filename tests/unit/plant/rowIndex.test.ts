import { describe, expect, it } from "vitest";
import type { Route } from "../../../core/model/route.ts";
import type { TableName } from "../../../core/model/tables.ts";
import { bucketIds, openRowIndex, type RowIndex, valueText } from "../../../core/plant/rowIndex.ts";
import { cellColumn } from "../../../core/plant/spatialGrid.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { rowOf } from "../../fixtures/route/faultyRoutes.ts";

function find(index: RowIndex, route: Route, table: TableName, wanted: Readonly<Record<string, string>>) {
  return bucketIds(index.by(route, table, Object.keys(wanted)), valueText(Object.values(wanted)));
}

describe("the row index", () => {
  it("finds rows by one column, sorted by id", () => {
    expect(find(openRowIndex(), smallRoute(), "drop", { terminalId: "terminal-1" })).toEqual(["drop-1", "drop-2"]);
  });

  it("finds rows by several columns at once", () => {
    const index = openRowIndex();
    expect(find(index, smallRoute(), "attachment", { poleId: "pole-2", kind: "neutral" })).toEqual(["neutral-2"]);
    expect(find(index, smallRoute(), "attachment", { poleId: "pole-2", kind: "riser" })).toEqual([]);
  });

  it("takes null as the empty text", () => {
    expect(find(openRowIndex(), smallRoute(), "cable", { fromClosureId: "" })).toEqual(["cable-1"]);
  });

  it("moves a row between buckets and names both", () => {
    const index = openRowIndex();
    const route = smallRoute();
    find(index, route, "drop", { terminalId: "terminal-1" });
    const before = rowOf(route, "drop", "drop-2");
    expect(index.move("drop", "drop-2", before, { ...before, terminalId: "terminal-2" })).toEqual([
      ["where/drop/terminalId", "terminal-1"],
      ["where/drop/terminalId", "terminal-2"],
    ]);
    expect(find(index, route, "drop", { terminalId: "terminal-2" })).toEqual(["drop-2", "drop-3"]);
  });

  it("names no bucket for an edit of a column nobody looks up", () => {
    const index = openRowIndex();
    const route = smallRoute();
    find(index, route, "drop", { terminalId: "terminal-1" });
    const before = rowOf(route, "drop", "drop-2");
    expect(index.move("drop", "drop-2", before, { ...before, port: 7 })).toEqual([]);
  });

  it("takes in a new row and lets an old one go", () => {
    const index = openRowIndex();
    const route = smallRoute();
    find(index, route, "drop", { terminalId: "terminal-2" });
    const drop = rowOf(route, "drop", "drop-3");
    index.move("drop", "drop-9", null, { ...drop, id: "drop-9" });
    index.move("drop", "drop-3", drop, null);
    expect(find(index, route, "drop", { terminalId: "terminal-2" })).toEqual(["drop-9"]);
  });

  it("keeps apart values that read alike when joined", () => {
    expect(valueText(["a,b", "c"])).not.toBe(valueText(["a", "b,c"]));
  });

  it("keeps the square a pole stands in", () => {
    expect(find(openRowIndex(), smallRoute(), "pole", { [cellColumn]: "1 0" })).toEqual(["pole-4"]);
  });

  it("refuses to place rows that have no coordinates", () => {
    expect(() => find(openRowIndex(), smallRoute(), "drop", { [cellColumn]: "0 0" })).toThrow(
      "has no place on the grid",
    );
  });
});

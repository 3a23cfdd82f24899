import { describe, expect, it } from "vitest";
import type { RowChange } from "../../../core/model/rowChange.ts";
import { defineQuery, openPlant } from "../../../core/plant/plant.ts";
import { changed, smallRoute, without, withRows } from "../../fixtures/route/buildRoute.ts";
import { rowOf } from "../../fixtures/route/faultyRoutes.ts";

const unitCount = defineQuery(
  "test-unit-count",
  (plant, radius) => plant.near("livingUnit", { eastM: 45, northM: 0 }, Number(radius)).length,
);

function unitMove(eastM: number) {
  const route = changed(smallRoute(), "livingUnit", "unit-3", { eastM });
  const rows: RowChange[] = [
    {
      table: "livingUnit",
      id: "unit-3",
      before: rowOf(smallRoute(), "livingUnit", "unit-3"),
      after: rowOf(route, "livingUnit", "unit-3"),
    },
  ];
  return { route, rows };
}

describe("the plant", () => {
  it("finds living units within a distance and no others", () => {
    const plant = openPlant(smallRoute());
    expect(plant.near("livingUnit", { eastM: 45, northM: 0 }, 33)).toEqual(["unit-1", "unit-2"]);
    expect(plant.near("livingUnit", { eastM: 45, northM: 0 }, 31)).toEqual([]);
  });

  it("asks again what looked around a point when a unit moves in from another square", () => {
    const plant = openPlant(smallRoute());
    expect(unitCount(plant, "33")).toBe(2);
    const { route, rows } = unitMove(50);
    expect(plant.advance(route, rows)).toEqual(["test-unit-count/33"]);
    expect(unitCount(plant, "33")).toBe(3);
  });

  it("leaves alone what looked elsewhere", () => {
    const route = smallRoute({ poleCount: 12 });
    const plant = openPlant(route);
    unitCount(plant, "33");
    const unit = rowOf(route, "livingUnit", "unit-11");
    const after = { ...unit, northM: 20 };
    const next = withRows(route, "livingUnit", [after]);
    expect(plant.advance(next, [{ table: "livingUnit", id: unit.id, before: unit, after }])).toEqual([]);
  });

  it("looks rows up by several columns", () => {
    expect(openPlant(smallRoute()).whereAll("fiberUse", { cableId: "cable-1", fiber: "2" })).toEqual(["use-2"]);
  });

  it("throws where a reference leads nowhere, and answers undefined where nobody promised a row", () => {
    const plant = openPlant(without(smallRoute(), "pole", "pole-1"));
    expect(plant.row("pole", "pole-1")).toBeUndefined();
    expect(() => plant.rowOf("pole", "pole-1")).toThrow("a reference leads nowhere: pole pole-1");
  });

  it("tells readers of a whole table when it gains a row", () => {
    const plant = openPlant(smallRoute());
    const poleCount = defineQuery("test-pole-count", (one) => one.all("pole").length);
    expect(poleCount(plant, "")).toBe(4);
    const after = { ...rowOf(smallRoute(), "pole", "pole-4"), id: "pole-5", tag: "P5" };
    const next = withRows(smallRoute(), "pole", [after]);
    expect(plant.advance(next, [{ table: "pole", id: "pole-5", before: null, after }])).toEqual(["test-pole-count/"]);
    expect(poleCount(plant, "")).toBe(5);
  });
});

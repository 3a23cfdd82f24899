import { expect, test } from "vitest";
import { explain } from "../../../../core/explain/explain.ts";
import { openPlant } from "../../../../core/plant/plant.ts";
import { headingOf } from "../../../../renderer/tables/columns/column.ts";
import { kinds } from "../../../../renderer/tables/kinds.ts";
import { smallRoute } from "../../../fixtures/route/buildRoute.ts";

const route = smallRoute();
const plant = openPlant(route);

test("every cell of every kind shows something in both systems of units, and what it shows reads back as no change", () => {
  for (const kind of kinds) {
    for (const id of kind.ids(route, plant)) {
      for (const column of kind.columns) {
        for (const units of ["us", "metric"] as const) {
          const given = { plant, units };
          const value = column.value(plant, id);
          const text = column.show(value, given);
          expect(text, `${kind.name} ${column.key}`).not.toMatch(/undefined|NaN|null/);
          const reading = column.write?.read(text, given, id);
          if (reading && text !== "") expect(reading.ok, `${kind.name} ${column.key} "${text}"`).toBe(true);
        }
      }
    }
  }
});

test("no two columns of a table share a key or a heading", () => {
  for (const kind of kinds) {
    const headings = kind.columns.map((column) => headingOf(column, "us"));
    expect(new Set(headings).size).toBe(headings.length);
    expect(new Set(kind.columns.map((column) => column.key)).size).toBe(headings.length);
  }
});

test("a cell that explains its figure explains the one it shows", () => {
  const explainedKeys = new Set<string>();
  for (const kind of kinds) {
    for (const id of kind.ids(route, plant)) {
      for (const column of kind.columns) {
        const figure = column.explains?.(plant, id);
        const told = figure && explain(plant, figure, "us");
        if (told?.kind !== "known") continue;
        expect(told.result.value, `${kind.name} ${column.heading}`).toBe(column.value(plant, id));
        explainedKeys.add(`${kind.id} ${column.key}`);
      }
    }
  }
  expect([...explainedKeys].sort()).toEqual([
    "attachment above",
    "cable sheath",
    "crossing clearance",
    "drop cut",
    "drop down",
    "drop run",
    "drop up",
    "guy pull",
    "livingUnit cut",
    "port cut",
    "port loss",
    "port run",
    "span sag",
    "span tension",
    "steel least",
    "steel sag hot",
    "steel sag iced",
    "steel sag stringing",
    "steel share hot",
    "steel share iced",
    "steel share loaded",
    "steel share stringing",
    "steel tension hot",
    "steel tension iced",
    "steel tension loaded",
    "steel tension stringing",
    "terminal station",
  ]);
});

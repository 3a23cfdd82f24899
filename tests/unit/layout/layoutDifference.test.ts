import { expect, test } from "vitest";
import { layoutDifference } from "../../../core/layout/layoutDifference.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";

const route = smallRoute();
const without = <T>(rows: ReadonlyMap<string, T>, id: string) => new Map([...rows].filter(([one]) => one !== id));
const [terminal] = [...route.terminal.values()];
if (!terminal) throw new Error("the small route has no terminal");

test("a layout with other names and numbers at the same places is no other layout", () => {
  const renamed = {
    terminal: new Map([...route.terminal].map(([id, one]) => [`new-${id}`, { ...one, id: `new-${id}`, name: "N" }])),
    drop: new Map(
      [...route.drop].map(([id, one]) => [id, { ...one, terminalId: `new-${one.terminalId}`, port: 9 - one.port }]),
    ),
  };
  expect(layoutDifference(route, renamed)).toEqual({ hung: [], remodelled: [], gone: [], moved: [], lost: [] });
});

test("a terminal elsewhere goes here and hangs there, and its drops run otherwise", () => {
  const other = changed(route, "terminal", terminal.id, { offsetM: terminal.offsetM + 5 });
  const { hung, gone, moved, remodelled, lost } = layoutDifference(route, other);
  expect(hung).toEqual([other.terminal.get(terminal.id)]);
  expect(gone).toEqual([terminal]);
  expect(moved.map((one) => one.livingUnitId).sort()).toEqual(
    [...route.drop.values()]
      .filter((one) => one.terminalId === terminal.id)
      .map((one) => one.livingUnitId)
      .sort(),
  );
  expect([remodelled, lost]).toEqual([[], []]);
});

test("a terminal of another model stays where it is, with its drops", () => {
  const [model] = [...route.terminalModel.keys()].filter((id) => id !== terminal.terminalModelId);
  const other = changed(route, "terminal", terminal.id, { terminalModelId: model ?? "" });
  const { remodelled, hung, gone, moved } = layoutDifference(route, other);
  expect(remodelled.map((one) => one.id)).toEqual([terminal.id]);
  expect([hung, gone, moved]).toEqual([[], [], []]);
});

test("a unit without a drop in the other layout loses its port, and one that had none comes to one", () => {
  const [drop] = [...route.drop.values()];
  if (!drop) throw new Error("the small route has no drop");
  const fewer = { ...route, drop: without(route.drop, drop.id) };
  expect(layoutDifference(route, fewer).lost).toEqual([drop.livingUnitId]);
  expect(layoutDifference(fewer, route).moved.map((one) => one.livingUnitId)).toEqual([drop.livingUnitId]);
});

import { expect, test } from "vitest";
import { extentsOf } from "../../../core/dxf/drawing.ts";
import { routeDrawing, writeRouteDxf } from "../../../core/dxf/writeRouteDxf.ts";
import { openPlant } from "../../../core/plant/plant.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const route = windingRoute();
const drawing = routeDrawing(openPlant(route));
const onLayer = (layer: string) => drawing.entities.filter((one) => one.layer === layer);
const inserts = (layer: string) => onLayer(layer).filter((one) => one.kind === "insert");

test("everything that has a place is drawn once, on the layer of its kind", () => {
  expect(inserts("POLE")).toHaveLength(route.pole.size);
  expect(onLayer("SPAN")).toHaveLength(route.span.size);
  expect(onLayer("STRAND")).toHaveLength([...route.span.values()].filter((one) => one.strandSectionId !== null).length);
  expect(inserts("TERMINAL")).toHaveLength(route.terminal.size);
  expect(inserts("COIL")).toHaveLength(route.slack.size);
  expect(inserts("CLOSURE")).toHaveLength(route.closure.size);
  expect(onLayer("CABLE")).toHaveLength(route.cable.size);
  expect(onLayer("DROP")).toHaveLength(route.drop.size);
  expect(onLayer("CROSSING")).toHaveLength(2 * route.crossing.size);
});

test("poles stand at their true places, in feet on a US route", () => {
  const poles = [...route.pole.values()];
  const { low, high } = extentsOf(onLayer("POLE"));
  const feet = (values: number[]) => [Math.min(...values), Math.max(...values)].map((one) => one / 0.3048);
  const [west, east] = feet(poles.map((one) => one.eastM));
  const [south, north] = feet(poles.map((one) => one.northM));
  expect(drawing.unit).toBe("ft");
  const near = (values: readonly unknown[]) => values.map((one) => expect.closeTo(Number(one), 9));
  expect([low, high]).toEqual([near([west, south]), near([east, north])]);
});

test("a terminal hangs 36 in from its pole in the drawing too", () => {
  const small = routeDrawing(openPlant(smallRoute()));
  const places = (layer: string) =>
    small.entities.flatMap((one) => (one.layer === layer && one.kind === "insert" ? [one.at] : []));
  const [terminal = [0, 0]] = places("TERMINAL");
  const off = places("POLE").map(([x, y]) => Math.hypot(x - terminal[0], y - terminal[1]));
  expect(Math.min(...off)).toBeCloseTo(3, 9);
});

test("a metric route is drawn in metres", () => {
  expect(routeDrawing(openPlant(windingRoute({ unitSystem: "metric" }))).unit).toBe("m");
});

test("every block that is put down is there, and symbols are drawn once", () => {
  const names = drawing.blocks.map((one) => one.name);
  expect(new Set(names).size).toBe(names.length);
  const used = new Set(drawing.entities.flatMap((one) => (one.kind === "insert" ? [one.block] : [])));
  expect([...used].sort()).toEqual([...names].sort());
});

test("layer 0 says what a drawing unit is", () => {
  const words = onLayer("0").flatMap((one) => (one.kind === "text" ? [one.text] : []));
  expect(words[0]).toContain("1 drawing unit = 1 foot (0.3048 m)");
});

test("the same route gives the same bytes, whatever the order of its tables", () => {
  const turned = { ...route, pole: new Map([...route.pole].reverse()), span: new Map([...route.span].reverse()) };
  const text = writeRouteDxf(route);
  expect(text.ok).toBe(true);
  expect(writeRouteDxf(turned)).toEqual(text);
});

test("a route without poles is refused in plain words", () => {
  expect(writeRouteDxf({ ...route, pole: new Map() })).toMatchObject({ ok: false, fault: { code: "nothing-to-draw" } });
});

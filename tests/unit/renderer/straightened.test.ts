import { expect, test } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { eastOfStation, rowStations, stationAt } from "../../../renderer/canvas/straight/rowStations.ts";
import { stackRows } from "../../../renderer/canvas/straight/stackRows.ts";
import { straightened } from "../../../renderer/canvas/straight/straightened.ts";
import { granted } from "../../fixtures/layout/asking.ts";
import { strungTown } from "../../fixtures/layout/townRoute.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const bent = granted(smallRoute(), "pole.move", { poleId: "pole-3", eastM: 45, northM: 60 });

test("a winding line is drawn straight, its spans as long as they are", () => {
  const plant = openPlant(bent);
  const drawn = straightened(plant, "scale");
  const lengths = ["span-1", "span-2", "span-3"].map((id) => plant.rowOf("span", id).lengthM);
  const places = ["pole-1", "pole-2", "pole-3", "pole-4"].map((id) => drawn.poleAt(id));
  expect(places.map((one) => one.northM)).toEqual([0, 0, 0, 0]);
  expect(places.slice(1).map((one, i) => one.eastM - (places[i]?.eastM ?? 0))).toEqual(
    lengths.map((one) => expect.closeTo(one, 9)),
  );
});

test("evenly spaced, every span is drawn as long as the mean span", () => {
  const drawn = straightened(openPlant(bent), "even");
  const east = ["pole-1", "pole-2", "pole-3", "pole-4"].map((id) => drawn.poleAt(id).eastM);
  const steps = east.slice(1).map((one, i) => one - (east[i] ?? 0));
  expect(Math.max(...steps) - Math.min(...steps)).toBeCloseTo(0, 9);
});

test("a living unit stays on its side of the line", () => {
  const plant = openPlant(smallRoute());
  const drawn = straightened(plant, "scale");
  const northOf = (id: string): number => drawn.unitAt(plant.rowOf("livingUnit", id)).northM;
  expect([northOf("unit-1"), northOf("unit-2")]).toEqual([30, -30]);
});

test("a cable that runs against the order of its spans is drawn from its feed end all the same", () => {
  const turned = granted(smallRoute(), "cable.reverse", { cableId: "cable-1" });
  const drawn = straightened(openPlant(turned), "scale");
  expect(["pole-4", "pole-1"].map((id) => drawn.poleAt(id).eastM)).toEqual([0, 135]);
  expect(drawn.unitAt(openPlant(turned).rowOf("livingUnit", "unit-1")).northM).toBe(-30);
});

test("every span is in exactly one row, and a lateral's row begins at its junction", () => {
  const town = strungTown({ poleCount: 6, laterals: [{ atPole: 3, poleCount: 2 }] });
  const drawn = straightened(openPlant(town), "scale");
  const spanIds = drawn.rows.flatMap((row) => row.steps.map((step) => step.spanId));
  expect(spanIds.sort()).toEqual([...town.span.keys()].sort());
  const [main, lateral] = drawn.rows;
  const junction = lateral?.steps[0]?.fromPoleId ?? "";
  expect(main?.steps.some((step) => step.toPoleId === junction)).toBe(true);
  expect(lateral?.fromM).toBe(drawn.poleAt(junction).eastM);
  expect(lateral?.northM).not.toBe(main?.northM);
  expect(drawn.leaders.map((one) => one.poleId)).toEqual([junction]);
});

test("spans that close a loop are drawn once each", () => {
  const span = { spanId: "span-9", fromPoleId: "pole-4", toPoleId: "pole-1", lengthM: null, strandSectionId: null };
  const looped = granted(bent, "span.add", { ...span, origin: "drawn", note: "" });
  const ids = straightened(openPlant(looped), "scale").rows.flatMap((row) => row.steps.map((step) => step.spanId));
  expect(ids.sort()).toEqual(["span-1", "span-2", "span-3", "span-9"]);
});

test("of two laterals on one side the one that leaves farther out lies nearer, so that no leader runs through a row", () => {
  const rows = [
    { fromM: 0, toM: 1000, parent: null, side: -1 },
    { fromM: 200, toM: 900, parent: 0, side: -1 },
    { fromM: 500, toM: 700, parent: 0, side: -1 },
    { fromM: 400, toM: 600, parent: 0, side: 1 },
  ] as const;
  expect(stackRows(rows)).toEqual([0, -2, -1, 1]);
});

test("the ruler's stations are the cable's own, and lead to where they lie on the page", () => {
  const plant = openPlant(bent);
  const drawn = straightened(plant, "even");
  const [row] = drawn.rows;
  if (!row) throw new Error("nothing is drawn");
  const poles = rowStations(plant, drawn, row);
  expect(poles.map((one) => one.stationM)).toEqual([0, 45, 105, expect.closeTo(213.167, 2)]);
  const halfway = eastOfStation(poles, 75) ?? Number.NaN;
  expect(halfway).toBeCloseTo(((poles[1]?.eastM ?? 0) + (poles[2]?.eastM ?? 0)) / 2, 9);
  expect(stationAt(poles, halfway)).toBeCloseTo(75, 9);
  expect(eastOfStation(poles, 400)).toBeNull();
});

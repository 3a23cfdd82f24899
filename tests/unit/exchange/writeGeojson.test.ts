import { describe, expect, test } from "vitest";
import { placedTables } from "../../../core/exchange/placedContent.ts";
import { readGeojson } from "../../../core/exchange/readGeojson.ts";
import { writeGeojson } from "../../../core/exchange/writeGeojson.ts";
import { distanceM } from "../../../core/geodesy/distance.ts";
import { changed, smallRoute } from "../../fixtures/route/buildRoute.ts";
import { bareRoute, planOf, valueIn } from "./importRoute.ts";

const origin = { originLonDeg: -71.13, originLatDeg: 42.39 };
const route = changed(smallRoute(), "settings", "settings", origin);
const features = (
  text: string,
): { id: string; geometry: { coordinates: number[] }; properties: Record<string, unknown> }[] =>
  JSON.parse(text).features;

describe("a route written as GeoJSON", () => {
  const all = features(valueIn(writeGeojson(route)));

  test("every table that has a place is there, row by row", () => {
    const counts = Object.fromEntries(
      placedTables.map((table) => [table, all.filter((one) => one.properties.route_table === table).length]),
    );
    expect(counts).toEqual(Object.fromEntries(placedTables.map((table) => [table, route[table].size])));
  });

  test("longitude comes first, to 7 decimals", () => {
    expect(all.find((one) => one.id === "pole-1")?.geometry).toEqual({ type: "Point", coordinates: [-71.13, 42.39] });
  });

  test("a terminal stands 36 in from its pole, within a centimetre", () => {
    const [lonDeg = 0, latDeg = 0] = all.find((one) => one.id === "terminal-1")?.geometry.coordinates ?? [];
    const [poleLon = 0, poleLat = 0] = all.find((one) => one.id === "pole-2")?.geometry.coordinates ?? [];
    expect(Math.abs(distanceM([poleLon, poleLat], [lonDeg, latDeg]) - 0.9144)).toBeLessThan(0.015);
  });

  test("only the tables asked for are written", () => {
    const poles = features(valueIn(writeGeojson(route, ["pole"])));
    expect(poles.map((one) => one.id)).toEqual(["pole-1", "pole-2", "pole-3", "pole-4"]);
  });

  test("of the whole file an import takes only its own kind, and says so", () => {
    const table = valueIn(readGeojson("route.geojson", valueIn(writeGeojson(route))));
    const plan = planOf(bareRoute(origin), { kind: "livingUnit", table });
    expect(plan).toMatchObject({ addedCount: route.livingUnit.size, bad: [] });
    expect(plan.notes[0]).toBe(
      `${all.length - route.livingUnit.size} features of other tables in the file are passed over.`,
    );
  });

  test("a route on a local grid has no place on the globe and is refused", () => {
    expect(writeGeojson(smallRoute())).toMatchObject({ ok: false, fault: { code: "no-origin" } });
  });
});

import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readGeojson } from "../../../core/exchange/readGeojson.ts";
import { fixtureText, geojsonFixture, valueIn } from "./importRoute.ts";

const filesIn = (folder: string): string[] =>
  readdirSync(new URL(`../../fixtures/exchange/${folder}`, import.meta.url));

describe("GeoJSON", () => {
  test("a feature becomes a row: its place, its properties, its id", () => {
    const text = JSON.stringify({
      type: "Feature",
      id: 7,
      properties: { tag: "P1", tall: true, nothing: null, list: [1, 2] },
      geometry: { type: "Point", coordinates: [-71.1, 42.4] },
    });
    expect(valueIn(readGeojson("a.geojson", text))).toMatchObject({
      lineWord: "feature",
      headings: ["lon", "lat", "tag", "tall", "nothing", "list", "id"],
      rows: [{ line: 1, cells: ["-71.1", "42.4", "P1", "true", "", "[1,2]", "7"] }],
    });
  });

  test("a property named lon stands beside the geometry's own", () => {
    expect(geojsonFixture("cambridge-addresses.geojson").headings).toEqual(
      expect.arrayContaining(["lon", "lat", "lon (2)", "lat (2)"]),
    );
  });

  test("a house drawn as a polygon is read as its middle, and that is said", () => {
    const table = geojsonFixture("cartago-houses.geojson");
    expect(table.rows.length).toBe(113);
    expect(table.notes).toEqual(["113 lines, polygons or groups are read as one place each: their middle."]);
  });

  test.each(filesIn("geojson-good"))("the valid file %s loads", (name) => {
    expect(readGeojson(name, fixtureText(`geojson-good/${name}`))).toMatchObject({ ok: true, value: { bad: [] } });
  });

  test.each(filesIn("geojson-bad").filter((name) => !name.startsWith("excessive_precision")))(
    "the broken file %s is refused, or read with a word about it",
    (name) => {
      const result = readGeojson(name, fixtureText(`geojson-bad/${name}`));
      const words = result.ok
        ? [...result.value.bad.map((row) => row.what), ...result.value.notes]
        : [result.fault.what];
      expect(words.length).toBeGreaterThan(0);
    },
  );

  test("one broken feature of a collection is reported by number and the others are kept", () => {
    const table = valueIn(readGeojson("stringcoord.geojson", fixtureText("geojson-bad/stringcoord.geojson")));
    expect(table.rows.map((row) => row.line)).toEqual([2]);
    expect(table.bad).toMatchObject([{ line: 1, what: "A coordinate is not a number." }]);
  });

  test.each(filesIn("json"))("the broken JSON %s is refused", (name) => {
    expect(readGeojson(name, fixtureText(`json/${name}`)).ok).toBe(false);
  });

  test("JSON nested 100,000 deep is refused or read, never a crash", () => {
    const depth = 100_000;
    const nested = `${"[".repeat(depth)}${"]".repeat(depth)}`;
    expect(readGeojson("deep.json", nested).ok).toBe(false);
    const property = `{"type":"Feature","geometry":null,"properties":{"deep":${nested}}}`;
    expect(() => readGeojson("deep.json", property)).not.toThrow();
  });

  test("a cut-off file is a fault at the line where it stops", () => {
    expect(readGeojson("cut.geojson", '{"type":"FeatureCollection",\n"features":[\n')).toMatchObject({
      ok: false,
      fault: { code: "not-json", where: "cut.geojson, line 2" },
    });
  });

  test("a file in another coordinate system is refused by name", () => {
    const text =
      '{"type":"FeatureCollection","crs":{"type":"name","properties":{"name":"urn:ogc:def:crs:EPSG::2249"}},"features":[]}';
    expect(readGeojson("grid.geojson", text)).toMatchObject({ ok: false, fault: { code: "other-grid" } });
  });
});

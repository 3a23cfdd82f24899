import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyChange } from "../../core/edits/change.ts";
import { importFields } from "../../core/exchange/importFields.ts";
import { importKind } from "../../core/exchange/importOptions.ts";
import { planImport } from "../../core/exchange/planImport.ts";
import { readCsv } from "../../core/exchange/readCsv.ts";
import { readGeojson } from "../../core/exchange/readGeojson.ts";
import { makeTable, type Table } from "../../core/exchange/table.ts";
import type { Result } from "../../core/model/result.ts";
import { readTable } from "../../electron/host/readTable/readTable.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";
import { bareRoute, fixtureText } from "../unit/exchange/importRoute.ts";

const kinds = importKind.options;
const routes = [bareRoute(), bareRoute({ originLonDeg: -71.13, originLatDeg: 42.39 }), smallRoute()];

/** Plans the table as every kind on every route, and holds the plan to its word: its rows apply, all of them. */
function tryAll(read: Result<Table>): void {
  if (!read.ok) return;
  for (const kind of kinds) {
    for (const route of routes) {
      const plan = planImport(route, { kind, table: read.value, onBad: "takeGood", onExisting: "replace" });
      if (plan.ok) expect(applyChange(route, { rows: plan.value.rows })).toMatchObject({ ok: true });
    }
  }
}

const naughty = fixtureText("naughty-strings.txt")
  .split("\n")
  .filter((one) => one !== "" && !one.startsWith("#"));
const cell = fc.oneof(
  fc.constantFrom(...naughty),
  fc.constantFrom(
    "-71.13",
    "42.39",
    "0",
    "45-4",
    "12 ft",
    "-5",
    "P1",
    "P2",
    "road",
    "home",
    "primary",
    "1e308",
    "1,234",
    "__proto__",
    "constructor",
  ),
  fc.string({ unit: "grapheme" }),
);

describe("whatever a file holds, an import answers", () => {
  test("any text read as delimited or as GeoJSON gives a table or a fault", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 400 }), (text) => {
        tryAll(readCsv("a.csv", text));
        tryAll(readGeojson("a.geojson", text));
      }),
      { numRuns: 150, seed: 11 },
    );
  });

  test("any JSON gives a table or a fault, also under GeoJSON's own names", () => {
    const members = fc.constantFrom(
      "type",
      "features",
      "geometry",
      "coordinates",
      "properties",
      "id",
      "geometries",
      "bbox",
      "crs",
    );
    const words = fc.constantFrom(
      "Feature",
      "FeatureCollection",
      "Point",
      "Polygon",
      "MultiPolygon",
      "LineString",
      "GeometryCollection",
    );
    const { tree } = fc.letrec<{ tree: unknown }>((tie) => ({
      tree: fc.oneof(
        { depthSize: "medium" },
        fc.double(),
        words,
        fc.constant(null),
        fc.array(tie("tree"), { maxLength: 4 }),
        fc.dictionary(members, tie("tree"), { maxKeys: 5 }),
      ),
    }));
    fc.assert(
      fc.property(tree, fc.oneof(words, fc.string()), (value, type) => {
        tryAll(
          readGeojson(
            "a.geojson",
            JSON.stringify({ type, features: [value], geometry: value, coordinates: value, properties: {} }),
          ),
        );
      }),
      { numRuns: 300, seed: 12 },
    );
  });

  test("any cells under the columns an import knows give rows that apply, or are reported", () => {
    const kind = fc.constantFrom(...kinds);
    const rows = fc.array(fc.array(cell, { minLength: 14, maxLength: 14 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(kind, rows, (of, cells) => {
        const headings = importFields[of].map((field) => field.title);
        const numbered = cells.map((row, index) => ({ line: index + 2, cells: row.slice(0, headings.length) }));
        const made = makeTable({ name: "a.csv", lineWord: "line", headings, rows: numbered, bad: [], notes: [] });
        if (!made.ok) throw new Error(made.fault.what);
        const columns = Object.fromEntries(importFields[of].map((field) => [field.field, field.title]));
        for (const route of routes) {
          const plan = planImport(route, {
            kind: of,
            table: made.value,
            columns,
            onBad: "takeGood",
            onExisting: "replace",
          });
          if (!plan.ok) continue;
          expect(applyChange(route, { rows: plan.value.rows })).toMatchObject({ ok: true });
          const told = new Set(plan.value.bad.map((row) => row.line));
          const taken = plan.value.addedCount + plan.value.replacedCount + plan.value.skippedCount;
          if (of !== "spanPair") expect(told.size + taken).toBeGreaterThanOrEqual(cells.length);
        }
      }),
      { numRuns: 300, seed: 13 },
    );
  });

  test("any bytes under any name give a table or a fault", async () => {
    const name = fc.constantFrom("a.csv", "a.tsv", "a.xlsx", "a.geojson", "a");
    const start = fc.constantFrom([], [0x50, 0x4b, 3, 4], [0xff, 0xfe], [0xef, 0xbb, 0xbf], [0x7b]);
    await fc.assert(
      fc.asyncProperty(name, start, fc.uint8Array({ maxLength: 300 }), async (of, first, rest) => {
        const read = await readTable(of, Uint8Array.from([...first, ...rest]));
        if (!read.ok)
          expect([read.fault.what, read.fault.where, read.fault.mend].every((words) => words !== "")).toBe(true);
      }),
      { numRuns: 200, seed: 14 },
    );
  });
});

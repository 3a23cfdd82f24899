import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyChange, changeThatFills } from "../../core/edits/change.ts";
import { planImport } from "../../core/exchange/planImport.ts";
import { readCsv } from "../../core/exchange/readCsv.ts";
import { readGeojson } from "../../core/exchange/readGeojson.ts";
import { readKml } from "../../core/exchange/readKml.ts";
import type { Table } from "../../core/exchange/table.ts";
import { addressKey } from "../../core/exchange/unitAddress.ts";
import { writeCsv } from "../../core/exchange/writeCsv.ts";
import { writeGeojson } from "../../core/exchange/writeGeojson.ts";
import { writeKml } from "../../core/exchange/writeKml.ts";
import { dropSurfaces, lineSurfaces } from "../../core/model/clearanceRows.ts";
import type { Route } from "../../core/model/route.ts";
import { type LivingUnit, type Pole, tables } from "../../core/model/tables.ts";
import { changed, smallRoute, withRows } from "../fixtures/route/buildRoute.ts";
import { bareRoute, planOf, valueIn } from "../unit/exchange/importRoute.ts";

const mm = (most: number) => fc.integer({ min: -most * 1000, max: most * 1000 }).map((value) => value / 1000);
const words = fc.string({ unit: "grapheme", maxLength: 30 }).map((text) => text.replace(/\r/g, "").trim());
const risky = fc.constantFrom(
  "=1+1",
  "'=x",
  "''+y",
  "-5",
  "@me",
  "a,b",
  'say "hi"',
  "two\nlines",
  "1;2\t3",
  "'tis",
  "",
);
const note = fc.oneof(words, risky);
const label = fc.oneof(words, risky).filter((text) => text !== "" && text.length <= 200);
/** Heights as they are entered: whole inches or whole centimetres. */
const height = fc.oneof(
  fc.integer({ min: 1, max: 1200 }).map((inches) => Math.round(inches * 254) / 10000),
  fc.integer({ min: 1, max: 3000 }).map((cm) => cm / 100),
);

const pole = fc.record<Omit<Pole, "id">>({
  tag: label,
  eastM: mm(20_000),
  northM: mm(20_000),
  groundM: fc.option(mm(3000)),
  aboveGroundM: fc.option(height),
  poleClass: fc.constantFrom("", "1", "4", "H2", "steel"),
  owner: note,
  line: note,
  order: fc.nat(5000),
  terminalAllowed: fc.boolean(),
  note,
});
const unit = fc.record<Omit<LivingUnit, "id">>({
  address: label,
  eastM: mm(20_000),
  northM: mm(20_000),
  kind: fc.constantFrom("home", "business", "lot"),
  building: note,
  attachHeightM: fc.option(height),
  groundM: fc.option(mm(3000)),
  note,
});
const poles = fc.uniqueArray(pole, { selector: (one) => one.tag, minLength: 1, maxLength: 12 });
const units = fc.uniqueArray(unit, { selector: (one) => addressKey(one.address), minLength: 1, maxLength: 12 });
const settings = fc.record({
  unitSystem: fc.constantFrom("us" as const, "metric" as const),
  origin: fc.option(
    fc.record({
      originLonDeg: fc.double({ min: -170, max: 170, noNaN: true }),
      originLatDeg: fc.double({ min: -70, max: 70, noNaN: true }),
    }),
  ),
});

function filled(
  bare: Route,
  given: { poles: readonly Omit<Pole, "id">[]; units: readonly Omit<LivingUnit, "id">[] },
): Route {
  const numbered = (n: number): string => String(n).padStart(3, "0");
  const pole = new Map(
    given.poles.map((row, n) => [`pole-${numbered(n + 1)}`, { ...row, id: `pole-${numbered(n + 1)}` }]),
  );
  const livingUnit = new Map(
    given.units.map((row, n) => [`livingUnit-${numbered(n + 1)}`, { ...row, id: `livingUnit-${numbered(n + 1)}` }]),
  );
  const route = { ...bare, pole, livingUnit };
  return valueIn(applyChange({ ...bare, settings: new Map() }, { rows: changeThatFills(route) }));
}

/** Rows without their ids, which an import gives anew. */
function bareRows<T extends { readonly id: string }>(rows: Iterable<T>): Omit<T, "id">[] {
  return [...rows].map(({ id: _id, ...row }) => row);
}

/** A route written as a file of places, and that file as a table. */
const placeFiles: Readonly<Record<string, (route: Route) => Table>> = {
  GeoJSON: (route) => valueIn(readGeojson("route.geojson", valueIn(writeGeojson(route)))),
  KML: (route) => valueIn(readKml("route.kml", valueIn(writeKml(route)))),
};
const formats = Object.entries(placeFiles);

describe("our own lists read back", () => {
  test("poles and living units written as CSV import to equal rows", () => {
    fc.assert(
      fc.property(poles, units, settings, (somePoles, someUnits, { unitSystem, origin }) => {
        const bare = bareRoute({ unitSystem, ...origin });
        const route = filled(bare, { poles: somePoles, units: someUnits });
        for (const kind of ["pole", "livingUnit"] as const) {
          const table = valueIn(readCsv("list.csv", writeCsv(route, kind)));
          const plan = valueIn(planImport(bare, { kind, table, onBad: "refuse", onExisting: "skip", spans: "none" }));
          expect(plan.bad).toEqual([]);
          const back = valueIn(applyChange(bare, { rows: plan.rows }));
          expect(bareRows<Pole | LivingUnit>(back[kind].values())).toEqual(
            bareRows<Pole | LivingUnit>(route[kind].values()),
          );
        }
      }),
      { numRuns: 150, seed: 21 },
    );
  });

  test.each(formats)("poles and living units written as %s import to equal rows, in place to 2 cm", (_, fileOf) => {
    fc.assert(
      fc.property(poles, units, settings, (somePoles, someUnits, { unitSystem, origin }) => {
        const bare = bareRoute({ unitSystem, ...(origin ?? { originLonDeg: -71.13, originLatDeg: 42.39 }) });
        const route = filled(bare, { poles: somePoles, units: someUnits });
        const table = fileOf(route);
        for (const kind of ["pole", "livingUnit"] as const) {
          const plan = valueIn(planImport(bare, { kind, table, onBad: "refuse", onExisting: "skip", spans: "none" }));
          const back: readonly (Pole | LivingUnit)[] = [
            ...valueIn(applyChange(bare, { rows: plan.rows }))[kind].values(),
          ];
          const sent: readonly (Pole | LivingUnit)[] = [...route[kind].values()];
          const still = { id: "", eastM: 0, northM: 0 };
          expect(back.map((one) => ({ ...one, ...still }))).toEqual(sent.map((one) => ({ ...one, ...still })));
          for (const [n, one] of back.entries()) {
            const [eastM = 0, northM = 0] = [sent[n]?.eastM, sent[n]?.northM];
            expect(Math.hypot(one.eastM - eastM, one.northM - northM)).toBeLessThan(0.02);
          }
        }
      }),
      { numRuns: 100, seed: 22 },
    );
  });
});

/** Places and lengths in tenths of a foot or whole centimetres: what a survey gives. */
const length = (least: number, most: number) =>
  fc.oneof(
    fc.integer({ min: Math.ceil(least * 100), max: most * 100 }).map((cm) => cm / 100),
    fc.integer({ min: Math.ceil(least * 33), max: most * 32 }).map((tenths) => Math.round(tenths * 304.8) / 10_000),
  );
const under = { spanId: fc.constantFrom("span-1", "span-2", "span-3"), offsetM: length(0, 45), name: note };
const elevation = mm(3000);
const site = fc.record({
  crossing: fc.array(
    fc.record({
      ...under,
      surface: fc.constantFrom(...lineSurfaces),
      widthM: length(0.1, 30),
      surfaceM: fc.option(elevation),
    }),
    { maxLength: 6 },
  ),
  groundPoint: fc.array(fc.record({ spanId: under.spanId, offsetM: under.offsetM, groundM: elevation }), {
    maxLength: 6,
  }),
  structure: fc.array(
    fc
      .record({
        ...under,
        kind: fc.constantFrom(...tables.structure.shape.kind.options),
        lengthM: length(0.1, 30),
        besideM: length(0, 12),
        side: fc.constantFrom("left" as const, "right" as const),
        heightM: length(4, 20),
        bottomM: fc.option(length(0.1, 3)),
      })
      .map((row) => (row.besideM === 0 ? { ...row, side: "left" as const } : row)),
    { maxLength: 6 },
  ),
  guy: fc.array(
    fc.record({
      poleId: fc.constantFrom("pole-1", "pole-2", "pole-3"),
      strandTypeId: fc.constant("strand-quarter"),
      heightM: length(3, 12),
      leadM: length(0.5, 12),
      directionRad: fc.integer({ min: -179, max: 180 }).map((degrees) => (degrees * Math.PI) / 180),
      anchorN: fc.option(fc.integer({ min: 1, max: 90 }).map((kN) => kN * 1000)),
      note,
    }),
    { maxLength: 4 },
  ),
  dropCrossing: fc.array(
    fc.record({
      livingUnitId: fc.constantFrom("unit-1", "unit-2", "unit-3"),
      name: note,
      surface: fc.constantFrom(...dropSurfaces),
      fromUnitM: length(0, 40),
      widthM: length(0.1, 30),
      surfaceM: elevation,
    }),
    { maxLength: 6 },
  ),
});
const siteTables = ["crossing", "groundPoint", "structure", "guy", "dropCrossing"] as const;

describe("what lies under, stands beside and holds the line", () => {
  test.each(formats)("written as %s, each kind imports to equal rows from the one file", (_, fileOf) => {
    fc.assert(
      fc.property(site, fc.constantFrom("us" as const, "metric" as const), (rows, unitSystem) => {
        const origin = { originLonDeg: -71.13, originLatDeg: 42.39, unitSystem };
        let route = {
          ...changed(smallRoute(), "settings", "settings", origin),
          crossing: new Map(),
          guy: new Map(),
        } as Route; // the two emptied tables keep their kind
        for (const table of siteTables) {
          const numbered = rows[table].map((row, at) => ({
            ...row,
            id: `${table}-${String(at + 1).padStart(3, "0")}`,
          }));
          route = withRows(route, table, numbered as never); // drawn by the arbitrary of that very table
        }
        const table = fileOf(route);
        for (const kind of siteTables.filter((table) => rows[table].length > 0)) {
          const bare: Route = { ...route, [kind]: new Map() };
          const plan = planOf(bare, { kind, table, onBad: "takeGood" });
          // the same place twice is one thing told twice: the importer says so
          expect(
            plan.bad.every(({ what }) => /already/.test(what)),
            JSON.stringify(plan.bad[0]),
          ).toBe(true);
          const back = [...valueIn(applyChange(bare, { rows: plan.rows }))[kind].values()];
          const lines = (on: Iterable<object>) => [...on].map((row) => JSON.stringify(near(row)));
          const sent = new Set(lines(route[kind].values()));
          expect(back).toHaveLength(rows[kind].length - plan.bad.length);
          for (const line of lines(back)) expect(sent).toContain(line);
        }
      }),
      { numRuns: 60, seed: 23 },
    );
  });
});

/** A row without its id, its figures to what the list's headings can tell: a tenth of a millimetre, a newton, a millionth of a degree. */
function near({ id: _id, ...row }: { readonly id?: string }): object {
  const round = ([name, value]: [string, unknown]) => [name, typeof value === "number" ? rounded(name, value) : value];
  return Object.fromEntries(
    Object.entries(row)
      .map(round)
      .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)),
  );
}

function rounded(name: string, value: number): number {
  if (name === "anchorN") return Math.round(value);
  if (name === "directionRad") return Math.round(((value + 4 * Math.PI) % (2 * Math.PI)) * 1e5) % 628319;
  return Math.round(value * 10_000) / 10_000;
}

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyChange, changeThatFills } from "../../core/edits/change.ts";
import { planImport } from "../../core/exchange/planImport.ts";
import { readCsv } from "../../core/exchange/readCsv.ts";
import { readGeojson } from "../../core/exchange/readGeojson.ts";
import { addressKey } from "../../core/exchange/unitAddress.ts";
import { writeCsv } from "../../core/exchange/writeCsv.ts";
import { writeGeojson } from "../../core/exchange/writeGeojson.ts";
import type { Route } from "../../core/model/route.ts";
import type { LivingUnit, Pole } from "../../core/model/tables.ts";
import { bareRoute, valueIn } from "../unit/exchange/importRoute.ts";

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
  groundM: fc.constant(null),
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

  test("poles written as GeoJSON import to equal rows, in place to 2 cm", () => {
    fc.assert(
      fc.property(poles, settings, (somePoles, { unitSystem, origin }) => {
        const bare = bareRoute({ unitSystem, ...(origin ?? { originLonDeg: -71.13, originLatDeg: 42.39 }) });
        const route = filled(bare, { poles: somePoles, units: [] });
        const table = valueIn(readGeojson("route.geojson", valueIn(writeGeojson(route))));
        const plan = valueIn(
          planImport(bare, { kind: "pole", table, onBad: "refuse", onExisting: "skip", spans: "none" }),
        );
        const back = [...valueIn(applyChange(bare, { rows: plan.rows })).pole.values()];
        const sent = [...route.pole.values()];
        const still = { id: "", eastM: 0, northM: 0 };
        expect(back.map((one) => ({ ...one, ...still }))).toEqual(sent.map((one) => ({ ...one, ...still })));
        for (const [n, one] of back.entries()) {
          expect(Math.hypot(one.eastM - (sent[n]?.eastM ?? 0), one.northM - (sent[n]?.northM ?? 0))).toBeLessThan(0.02);
        }
      }),
      { numRuns: 100, seed: 22 },
    );
  });
});

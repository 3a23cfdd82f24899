import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { tapLossDb } from "../../../core/fiber/splitterLoss.ts";
import { catalogueTables } from "../../../core/model/catalogueRows.ts";
import { mark } from "../../../core/model/fields.ts";
import { settings } from "../../../core/model/officeRows.ts";
import { references } from "../../../core/model/references.ts";

const folder = new URL("../../../assets/catalogue/", import.meta.url);

function readJson(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`${name}.json`, folder), "utf8"));
}

const flatRow = z.looseObject({
  id: z.string(),
  basisDocument: z.string().min(1),
  basisClause: z.string().min(1),
  basisMark: mark,
});
const names = Object.keys(catalogueTables);
const rowsOf = (name: string) => z.array(flatRow).parse(readJson(name));

/** A figure of a row by table, id and column. */
function figureOf(table: string, id: string, column: string): number {
  return z.number().parse(rowsOf(table).find((row) => row.id === id)?.[column]);
}

describe.each(Object.entries(catalogueTables))("the catalogue of %s", (name, schema) => {
  test("has rows, and each is one the route file takes", () => {
    const rows = z.array(schema).min(1).parse(readJson(name));
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
  });

  test("says of each row which document and clause it leans on", () => {
    expect(() => rowsOf(name)).not.toThrow();
  });
});

test("every catalogue reference leads to a row", () => {
  const idsOf = (name: string) => new Set(rowsOf(name).map((row) => row.id));
  const lost = Object.entries(references)
    .filter(([table]) => names.includes(table))
    .flatMap(([table, columns]) =>
      Object.entries(columns).flatMap(([column, target]) =>
        rowsOf(table)
          .filter((row) => row[column] !== null && !idsOf(target).has(z.string().parse(row[column])))
          .map((row) => `${table} ${row.id} ${column}`),
      ),
    );
  expect(lost).toEqual([]);
});

test("the default settings are a settings row whose references lead to catalogue rows", () => {
  const row = settings.parse(readJson("settings"));
  const lost = Object.entries(references.settings).filter(([column, target]) => {
    const id = Object.entries(row).find(([name]) => name === column)?.[1];
    const mayBeNone = Object.entries(settings.shape).some(
      ([name, field]) => name === column && field.safeParse(null).success,
    );
    if (id === null && mayBeNone) return false;
    return !rowsOf(target).some((candidate) => candidate.id === id);
  });
  expect(lost).toEqual([]);
});

test("every figure and choice of the default settings has a basis, and no basis is for a setting that is gone", () => {
  const basis = z.strictObject({ document: z.string().min(1), clause: z.string().min(1), edition: z.string(), mark });
  const bases = z.record(z.string(), basis).parse(readJson("settings.basis"));
  const row = settings.parse(readJson("settings"));
  const named = Object.entries(row).filter(
    ([column, value]) =>
      typeof value === "number" ||
      column in references.settings ||
      column === "unitSystem" ||
      column === "groundSurface" ||
      column === "strandAtPoles" ||
      column === "deadLength",
  );
  expect(Object.keys(bases).sort()).toEqual(named.map(([column]) => column).sort());
});

test("no NESC row claims that its table was read", () => {
  const bold = names.flatMap((name) =>
    rowsOf(name).filter((row) => row.basisDocument.includes("NESC") && row.basisMark === "seen"),
  );
  expect(bold).toEqual([]);
});

test("each terminal model's splitters have just its ports as legs, in even ranks on its face", () => {
  const rows = z.array(catalogueTables.terminalModel).parse(readJson("terminalModel"));
  const legsOf = (id: string) => figureOf("splitterType", id, "legCount");
  expect(rows.map((row) => row.splitterCount * legsOf(row.splitterTypeId))).toEqual(rows.map((row) => row.portCount));
  expect(rows.map((row) => row.portCount % row.rankCount)).toEqual(rows.map(() => 0));
  expect(rows.map((row) => [row.portCount, row.splitterCount, row.splitterTypeId])).toEqual([
    [4, 1, "splitter-1x4"],
    [8, 1, "splitter-1x8"],
    [12, 3, "splitter-1x4"],
    [16, 2, "splitter-1x8"],
    [4, 1, "tap-10-1x4"],
    [4, 1, "tap-20-1x4"],
    [4, 1, "tap-30-1x4"],
    [8, 1, "tap-10-1x8"],
    [8, 1, "tap-20-1x8"],
    [8, 1, "tap-30-1x8"],
  ]);
});

test("every terminal at the standard distance stands clear of the climbing space", () => {
  const row = settings.parse(readJson("settings"));
  const models = z.array(catalogueTables.terminalModel).parse(readJson("terminalModel"));
  const crowding = models.filter((model) => row.standoffM - model.lengthM / 2 < row.climbingSpaceM);
  expect(crowding).toEqual([]);
});

test("each file of the folder is a catalogue table, or the settings and their bases", () => {
  const found = readdirSync(folder).map((file) => file.replace(".json", ""));
  expect(found.sort()).toEqual([...names, "settings", "settings.basis"].sort());
});

test("a tap loses to its terminal and to the fiber beyond what its share says, its own loss and the splitter behind it", () => {
  for (const legCount of [4, 8]) {
    const most = figureOf("splitterType", `splitter-1x${legCount}`, "maxLossDb");
    for (const percent of [10, 20, 30]) {
      const tap = (column: string) => figureOf("splitterType", `tap-${percent}-1x${legCount}`, column);
      expect(tap("maxLossDb")).toBeCloseTo(tapLossDb(percent / 100, 0.5) + most, 1);
      expect(tap("throughLossDb")).toBeCloseTo(tapLossDb(1 - percent / 100, 0.5), 1);
    }
  }
});

/** Metric value as printed or exactly converted, the printed figure, and where it is printed. */
const spotChecks = [
  ["strandType", "strand-6-6m", "breakingN", 6650 * 4.4482216152605, "6650 lbf, A475 table 1 EHS [memory]"],
  ["strandType", "strand-6-6m", "weightNPerM", 0.121 * 14.593903, "121 lb/1000 ft, A475 table 1 [memory]"],
  ["strandType", "strand-6-6m", "areaM2", 0.035186 * 0.0254 ** 2, "7 pi/4 x (0.080 in)^2 = 0.0352 in2 [computed]"],
  ["strandType", "strand-10m", "breakingN", 11500 * 4.4482216152605, "11500 lbf, 10M [memory]"],
  ["strandType", "strand-10m", "areaM2", 0.0791681 * 0.0254 ** 2, "0.0792 in2 [computed]"],
  ["strandType", "strand-6m", "diameterM", 0.0079375, "5/16 in"],
  ["strandType", "strand-25m", "modulusPa", 24e6 * 6894.757, "24e6 psi [practice]"],
  ["strandType", "strand-25m", "expansionPerC", 11.52e-6, "6.4e-6 per degF [memory]"],
  ["strengthLimit", "nesc-strand-stringing", "limitFrac", 0.25, "owners cap stringing at 10 to 25 % [practice]"],
  ["cableType", "cable-72", "diameterM", 0.010922, "0.43 in (10.9 mm) [practice]"],
  ["cableType", "cable-144", "weightNPerM", 0.14 * 14.593903, "140 lb/1000 ft [practice]"],
  ["splitterType", "splitter-1x8", "maxLossDb", 10.5, "1x8 planar, 10.1 typical, 10.5 at most [practice]"],
  ["clearanceLimit", "nesc-road", "limitM", 4.7244, "15.5 ft, NESC T232-1 [memory]"],
  ["clearanceLimit", "nesc-rail", "limitM", 7.1628, "23.5 ft, NESC T232-1 [memory]"],
  ["clearanceLimit", "nesc-supplyAtPole", "limitM", 1.016, "40 in, NESC T235-5 [memory]"],
  ["clearanceLimit", "nesc-neutralInSpan", "limitM", 0.5715, "22.5 in, NESC 235C2b [memory]"],
  ["clearanceLimit", "go95-road", "limitM", 5.4864, "18 ft, GO 95 (Original) T1 case 3 [seen, historical]"],
  ["clearanceLimit", "uk-road", "limitM", 5.5, "5.5 m, SI 2003/2553 reg. 4(2)(a) [seen]"],
  ["loadingDistrict", "district-nesc-heavy", "iceM", 0.0127, "0.50 in, NESC T250-1 [memory]"],
  ["loadingDistrict", "district-nesc-heavy", "windPa", 4 * 47.880259, "4 psf, NESC T250-1 [memory]"],
  ["loadingDistrict", "district-nesc-heavy", "constantNPerM", 0.3 * 14.593903, "K 0.30 lb/ft, NESC T251-1 [memory]"],
  ["loadingDistrict", "district-nesc-medium", "temperatureDegC", -85 / 9, "15 degF, NESC T250-1 [second-hand]"],
  ["loadingDistrict", "district-go95-light", "windPa", 8 * 47.880259, "8 psf, GO 95 App. B T21 [seen]"],
  ["loadingDistrict", "district-go95-heavy", "hotDegC", 490 / 9, "130 degF, GO 95 43.1 [seen]"],
  ["opticalClass", "gpon-b-plus", "maxLossDb", 28, "G-PON B+, G.984.2 Amd. 1 [second-hand]"],
  ["opticalClass", "gpon-b-plus", "hubLaunchLeastDbm", 1.5, "+1.5 to +5 dBm, G.984.2 Amd. 1 [second-hand]"],
  ["opticalClass", "gpon-b-plus", "unitReceiveLeastDbm", -27, "-27 to -8 dBm, G.984.2 Amd. 1 [second-hand]"],
  ["opticalClass", "gpon-c-plus", "hubReceiveMostDbm", -12, "-32 to -12 dBm, G.984.2 Amd. 2 [memory]"],
  ["opticalClass", "xgs-n1", "unitLaunchMostDbm", 9, "+4 to +9 dBm, G.9807.1 [second-hand]"],
  ["opticalClass", "xgs-e2", "hubReceiveLeastDbm", -32, "-32 to -11 dBm, G.9807.1 [memory]"],
  ["opticalClass", "xgs-n1", "minLossDb", 14, "XGS-PON N1, G.9807.1 [second-hand]"],
] as const;

test.each(spotChecks)("%s %s: %s is %d from the printed %s", (table, id, column, expected) => {
  expect(Math.abs(figureOf(table, id, column) / expected - 1)).toBeLessThan(1e-5);
});

test("ice weighs 57 lb/ft3, printed as 913 kg/m3, in every district", () => {
  const rows = z.array(catalogueTables.loadingDistrict).parse(readJson("loadingDistrict"));
  expect(rows.map((row) => Math.round(row.iceDensityKgPerM3))).toEqual(rows.map(() => 913));
});

test("the standard terminal stands 36 in out, with a 10 ft opening and a 10 ft coil doubled", () => {
  const { standoffM, openingM, accessSlackM, dropReachM, strandHeightM } = settings.parse(readJson("settings"));
  expect({ standoffM, openingM, accessSlackM, dropReachM, strandHeightM }).toEqual({
    standoffM: 0.9144,
    openingM: 3.048,
    accessSlackM: 6.096,
    dropReachM: 91.44,
    strandHeightM: 5.6388,
  });
});

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { demoSeed, makeDemo } from "../../../../assets/demo/makeDemo.ts";
import { planted } from "../../../../assets/demo/planted.ts";
import { guessColumns } from "../../../../core/exchange/guessColumns.ts";
import { readCsv } from "../../../../core/exchange/readCsv.ts";
import { catalogueTables } from "../../../../core/model/catalogueRows.ts";
import { settings as settingsRow } from "../../../../core/model/officeRows.ts";
import { changeOfState } from "../../../../core/strand/changeOfState.ts";
import { lineLoad } from "../../../../core/strand/lineLoad.ts";
import { stringingHorizontalN } from "../../../../core/strand/stringing.ts";

type Line = Readonly<Record<string, string>>;

function readLines(text: string): readonly Line[] {
  const table = readCsv("demo.csv", text);
  if (!table.ok) throw new Error(table.fault.what);
  expect(table.value.bad).toEqual([]);
  const { headings, rows } = table.value;
  return rows.map(({ cells }) => Object.fromEntries(headings.map((heading, at) => [heading, cells[at] ?? ""])));
}

function numberIn(line: Line, column: string): number {
  const text = line[column] ?? "";
  if (text === "") throw new Error(`nothing in ${column} of ${JSON.stringify(line)}`);
  return Number(text);
}

const files = makeDemo(demoSeed);
const poles = readLines(files.poles);
const addresses = readLines(files.addresses);
const attachments = readLines(files.attachments);
const crossings = readLines(files.crossings);
const poleOf = (tag: string): Line => {
  const pole = poles.find((line) => line.tag === tag);
  if (!pole) throw new Error(`no pole ${tag}`);
  return pole;
};

/** Distance between two lines of a file by their coordinates, ft, on a sphere: good to 0.4 %. */
function apartFt(a: Line, b: Line): number {
  const rad = Math.PI / 180;
  const latRad = numberIn(a, "latitude") * rad;
  const northM = 6371000 * rad * (numberIn(b, "latitude") - numberIn(a, "latitude"));
  const eastM = 6371000 * rad * Math.cos(latRad) * (numberIn(b, "longitude") - numberIn(a, "longitude"));
  return Math.hypot(northM, eastM) / 0.3048;
}

const spans = poles.flatMap((to, at) => {
  const from = to.from ? poleOf(to.from) : poles[at - 1];
  return from ? [{ from: from.tag ?? "", to: to.tag ?? "", lengthFt: apartFt(from, to) }] : [];
});

function heightsFt(tag: string, kinds: readonly string[]): readonly number[] {
  const found = attachments.filter((line) => line.pole === tag && kinds.includes(line.kind ?? ""));
  return found.map((line) => numberIn(line, "height_ft"));
}

function strandFt(tag: string): number {
  const [heightFt] = heightsFt(tag, ["ourStrand"]);
  if (heightFt === undefined) throw new Error(`no strand on ${tag}`);
  return heightFt;
}

/** Poles where something of these kinds hangs nearer above our strand than asked. */
function nearerThan(kinds: readonly string[], limitFt: number): string[] {
  const tags = poles.map((pole) => pole.tag ?? "");
  return tags.filter((tag) => heightsFt(tag, kinds).some((heightFt) => heightFt - strandFt(tag) < limitFt - 1e-9));
}

const limitsFt: Readonly<Record<string, number>> = {
  road: 15.5,
  driveway: 15.5,
  rail: 23.5,
  water: 14,
  pedestrian: 9.5,
  field: 15.5,
};

function catalogue(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../../../../assets/catalogue/${name}.json`, import.meta.url), "utf8"));
}

const settings = settingsRow.parse(catalogue("settings"));
const strand = z
  .array(catalogueTables.strandType)
  .parse(catalogue("strandType"))
  .find((row) => row.id === settings.strandTypeId);
const cables = z
  .array(catalogueTables.cableType)
  .parse(catalogue("cableType"))
  .filter((row) => row.fiberCount <= 144);
const districts = z.array(catalogueTables.loadingDistrict).parse(catalogue("loadingDistrict"));
const district = districts.find((row) => row.id === settings.loadingDistrictId);

type Weather = "strung" | "hot" | "iced";

/** Midspan sag over span length under the default settings, by the strand kernels. */
function sagFrac(spanM: number, cable: (typeof cables)[number], weather: Weather): number {
  if (!strand || !district) throw new Error("the default settings name rows that are not there");
  const weightNPerM = strand.weightNPerM + cable.weightNPerM + settings.lashingNPerM;
  const { verticalNPerM } = lineLoad({
    diameterM: strand.diameterM + cable.diameterM,
    weightNPerM,
    iceM: weather === "iced" ? district.iceM : 0,
    windPa: 0,
    constantNPerM: 0,
  });
  const horizontalN = stringingHorizontalN(spanM, weightNPerM, settings.stringingSagFrac);
  const degC = { strung: settings.stringingDegC, hot: district.hotDegC, iced: district.icedDegC }[weather];
  const state = changeOfState({
    spanM,
    axialStiffnessN: strand.areaM2 * strand.modulusPa,
    expansionPerDegC: strand.expansionPerC,
    from: { weightNPerM, temperatureDegC: settings.stringingDegC, horizontalN },
    to: { weightNPerM: verticalNPerM, temperatureDegC: degC },
  });
  if (!state.ok) throw new Error(state.fault.what);
  return (verticalNPerM * spanM) / (8 * state.value.horizontalN);
}

/** What a crossing has over its limit under every cable of up to 144 fibers, ft; negative where it is short. */
function overLimitsFt(crossing: Line, weather: Weather): readonly number[] {
  const [from, to] = [crossing.from_pole ?? "", crossing.to_pole ?? ""];
  const lengthFt = spans.find((span) => span.from === from && span.to === to)?.lengthFt ?? Number.NaN;
  const along = numberIn(crossing, "offset_ft") / lengthFt;
  const topFt = (tag: string) => numberIn(poleOf(tag), "ground_ft") + strandFt(tag);
  const chordFt = topFt(from) + (topFt(to) - topFt(from)) * along;
  const limitFt = limitsFt[crossing.surface ?? ""] ?? Number.NaN;
  const sagFt = (cable: (typeof cables)[number]) =>
    4 * sagFrac(lengthFt * 0.3048, cable, weather) * lengthFt * along * (1 - along);
  return cables.map((cable) => chordFt - sagFt(cable) - numberIn(crossing, "surface_elevation_ft") - limitFt);
}

/** Spans whose crossings are short under some cable. */
function shortSpans(weather: Weather): string[] {
  const levelled = crossings.filter((line) => line.surface_elevation_ft !== "");
  return levelled
    .filter((line) => Math.min(...overLimitsFt(line, weather)) < 0)
    .map(spanName)
    .sort();
}

const crossingAt = ({ from, to }: { from: string; to: string }): Line => {
  const crossing = crossings.find((line) => line.from_pole === from && line.to_pole === to);
  if (!crossing) throw new Error(`nothing crosses ${from} to ${to}`);
  return crossing;
};
const spanName = (line: Line): string => `${line.from_pole} ${line.to_pole}`;

describe("the demo route as a place", () => {
  test("the same seed gives the same files and another seed gives others", () => {
    expect(makeDemo(demoSeed)).toEqual(files);
    expect(makeDemo(demoSeed + 1)).not.toEqual(files);
  });

  test.each([
    ["pole", "poles"],
    ["livingUnit", "addresses"],
    ["attachment", "attachments"],
    ["crossing", "crossings"],
  ] as const)("an import of %s rows understands every heading of its file", (kind, file) => {
    const table = readCsv(`${file}.csv`, files[file]);
    if (!table.ok) throw new Error(table.fault.what);
    const taken = Object.values(guessColumns(table.value, kind)).map((guess) => guess.heading);
    expect(taken.sort()).toEqual([...table.value.headings].sort());
  });

  test("40 to 60 poles stand in a main line and two laterals that leave it at corners", () => {
    expect(poles.length).toBeGreaterThanOrEqual(40);
    expect(poles.length).toBeLessThanOrEqual(60);
    expect(poles.filter((pole) => pole.order === "1").map((pole) => [pole.line, pole.from])).toEqual([
      ["Main", ""],
      ["Lateral A", "M-09"],
      ["Lateral B", "M-20"],
    ]);
    expect(poles.filter((pole) => pole.order !== "1" && pole.from !== "")).toEqual([]);
    expect(new Set(poles.map((pole) => pole.tag)).size).toBe(poles.length);
  });

  test("150 to 200 living units with addresses of their own, among them shops, lots and houses of two to four", () => {
    expect(addresses.length).toBeGreaterThanOrEqual(150);
    expect(addresses.length).toBeLessThanOrEqual(200);
    expect(new Set(addresses.map((line) => line.address)).size).toBe(addresses.length);
    expect(new Set(addresses.map((line) => line.kind))).toEqual(new Set(["home", "business", "lot"]));
    const buildings = [...new Set(addresses.map((line) => line.building ?? ""))].filter((name) => name !== "");
    const unitCounts = buildings.map((name) => addresses.filter((line) => line.building === name).length);
    expect(Math.min(...unitCounts)).toBe(2);
    expect(Math.max(...unitCounts)).toBeLessThanOrEqual(4);
  });

  test("spans are 100 to 250 ft long but for the stub pole's", () => {
    const odd = spans.filter(({ lengthFt }) => lengthFt < 100 || lengthFt > 250);
    expect(odd.map(({ from, to }) => [from, to])).toEqual([[planted.shortSpan.from, planted.shortSpan.to]]);
  });

  test("a truck road, about ten driveways, a railroad, a creek and a footpath run under it", () => {
    const countOf = (surface: string) => crossings.filter((line) => line.surface === surface).length;
    expect([countOf("road"), countOf("rail"), countOf("water"), countOf("pedestrian")]).toEqual([2, 1, 1, 1]);
    expect(countOf("driveway")).toBeGreaterThanOrEqual(9);
    expect(countOf("driveway")).toBeLessThanOrEqual(12);
    const unknown = crossings.filter((line) => !spans.some((span) => spanName(line) === `${span.from} ${span.to}`));
    expect(unknown).toEqual([]);
  });

  test("nothing hangs above a pole's top and every pole carries our strand", () => {
    const floating = attachments.filter(
      (line) => numberIn(line, "height_ft") > numberIn(poleOf(line.pole ?? ""), "above_ground_ft"),
    );
    expect(floating).toEqual([]);
    expect(poles.filter((pole) => heightsFt(pole.tag ?? "", ["ourStrand"]).length !== 1)).toEqual([]);
  });

  test("a pole of 35 ft stands 29.5 ft out of the ground", () => {
    const heights = poles.filter((pole) => pole.class?.startsWith("35")).map((pole) => pole.above_ground_ft);
    expect(new Set(heights)).toEqual(new Set(["29.5"]));
  });
});

describe("what is wrong with the demo route on purpose, and nothing else", () => {
  test("power hangs too low on one pole only", () => {
    expect(nearerThan(["primary", "secondary", "equipment", "streetLight"], 40 / 12)).toEqual([planted.lowPower.pole]);
    expect(nearerThan(["neutral"], 30 / 12)).toEqual([]);
  });

  test("the telephone cable is too near on one pole only", () => {
    expect(nearerThan(["communication"], 1)).toEqual([planted.closeTelephone.pole]);
  });

  test("every crossing is clear as strung", () => {
    expect(shortSpans("strung")).toEqual([]);
  });

  test("one driveway and the railroad are short on the hottest day and under ice, and no other crossing is", () => {
    const short = [planted.lowDriveway, planted.lowRail].map(({ from, to }) => `${from} ${to}`);
    expect(shortSpans("hot")).toEqual(short);
    expect(shortSpans("iced")).toEqual(short);
  });

  test.each([planted.lowDriveway, planted.lowRail])(
    "$from to $to is short by 1 to 4 in when hot, with any cable",
    (at) => {
      const overFt = overLimitsFt(crossingAt(at), "hot");
      expect(Math.max(...overFt)).toBeLessThan(-1 / 12);
      expect(Math.min(...overFt)).toBeGreaterThan(-4 / 12);
    },
  );

  test("one span is as short as its stub pole makes it", () => {
    const { from, to, lengthFt } = planted.shortSpan;
    expect(spans.find((span) => span.from === from && span.to === to)?.lengthFt).toBeCloseTo(lengthFt, 0);
  });

  test("one house stands out of a drop's reach of every pole and all others within it", () => {
    const nearestFt = (line: Line) => Math.min(...poles.map((pole) => apartFt(line, pole)));
    expect(addresses.filter((line) => nearestFt(line) > 300).map((line) => line.address)).toEqual(["7 Orchard Track"]);
    expect(addresses.filter((line) => nearestFt(line) > 200)).toHaveLength(1);
  });

  test("one crossing and the pole beside it have no ground elevation", () => {
    expect(crossings.filter((line) => line.surface_elevation_ft === "").map(spanName)).toEqual(["A-06 A-07"]);
    expect(poles.filter((pole) => pole.ground_ft === "").map((pole) => pole.tag)).toEqual([planted.unlevelled.to]);
  });
});

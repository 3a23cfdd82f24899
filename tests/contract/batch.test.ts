import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import readWorkbook from "read-excel-file/node";
import { afterAll, beforeAll, expect, test } from "vitest";
import { makeDemo } from "../../assets/demo/makeDemo.ts";
import type { Desk } from "../../electron/batch/verb.ts";
import { verbs } from "../../electron/batch/verbs.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { readXml } from "../fixtures/exchange/readXml.ts";

const folder = mkdtempSync(join(tmpdir(), "strand-batch-"));
const file = join(folder, "town.strand");

function deskWith(input = ""): Desk {
  return {
    stamp: { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" },
    assetsFolder: join(import.meta.dirname, "../../assets"),
    windowFolder: folder,
    runJob: runJobHere,
    readInput: async () => input,
    say: () => {},
  };
}

async function run(line: readonly string[], input = "") {
  const verb = verbs.find((one) => one.name === line[0]);
  if (!verb) throw new Error(`no verb ${line[0]}`);
  return verb.run(line.slice(1), deskWith(input));
}

/** A list of the demo place written where a person would have it. */
function list(name: "poles" | "addresses" | "attachments" | "crossings"): string {
  const path = join(folder, `${name}.csv`);
  writeFileSync(path, makeDemo(20)[name]);
  return path;
}

beforeAll(async () => {
  const made = await run(["new", file, "--name", "Test town", "--units", "us"]);
  if (!made.ok) throw new Error(made.fault.what);
});
afterAll(() => rmSync(folder, { recursive: true }));

test("a route is made, filled from four lists, laid out, checked and drawn", async () => {
  const lists = [
    "--poles",
    list("poles"),
    "--units",
    list("addresses"),
    "--attachments",
    list("attachments"),
    "--crossings",
    list("crossings"),
  ];
  const imported = await run(["import", file, ...lists]);
  expect(imported).toMatchObject({
    ok: true,
    value: { exitCode: 0, json: [{ addedCount: 50 }, { addedCount: 174 }, { addedCount: 241 }, { addedCount: 17 }] },
  });
  expect(await run(["layout", file])).toMatchObject({
    ok: true,
    value: {
      json: { routeName: "Test town", ended: "proven", unserved: [{ address: "7 Orchard Track", kind: "reach" }] },
      lines: expect.arrayContaining([
        expect.stringMatching(/bound [\d,.]+: proven the cheapest; the search came to its end\.$/),
      ]),
    },
  });
  expect(await run(["layout", file, "--steps", "300"])).toMatchObject({
    value: { json: { ended: expect.stringMatching(/^(work|moment)$/) } },
  });
  expect(await run(["layout", file, "--steps", "none"])).toMatchObject({ ok: false, fault: { where: "--steps" } });
  expect(await run(["layout", file])).toMatchObject({ value: { json: { ended: "proven" } } });
  const checked = await run(["check", file]);
  expect(checked).toMatchObject({ ok: true, value: { exitCode: 1 } });
  expect(await run(["draw", file])).toMatchObject({ ok: true, value: { exitCode: 0 } });
  expect(readFileSync(join(folder, "town.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
});

test("what would be otherwise is printed beside what is, and changes the file only when it is taken", async () => {
  const asked = ["what-if", file, "--reach", "230 ft", "--spare", "1"];
  const tried = await run(asked);
  expect(tried).toMatchObject({ ok: true, value: { json: { taken: false } } });
  const lines = tried.ok ? tried.value.lines : [];
  expect(lines[0]).toMatch(/^ +As it is +The other$/);
  expect(lines.find((one) => one.startsWith("Longest drop"))).toMatch(/ ft +2\d\d ft/);
  expect(await run([...asked, "--take"])).toMatchObject({ ok: true, value: { json: { taken: true } } });
  expect(await run(asked)).toMatchObject({ ok: true, value: { json: { taken: false } } });
  for (const odd of [
    ["--spare", "1.5"],
    ["--reach", "far"],
    ["--price", "x"],
    ["--drop-price", "none"],
  ])
    expect(await run(["what-if", file, ...odd])).toMatchObject({
      ok: false,
      fault: { code: "bad-arguments", where: odd[0] },
    });
  expect(await run(["what-if", file, "--model", "nothing"])).toMatchObject({
    ok: false,
    fault: { code: "missing-row" },
  });
});

test("figures are worked out on pages of their own, and what names no figure is refused", async () => {
  const [once, twice] = [join(folder, "worksheets.pdf"), join(folder, "worksheets-2.pdf")];
  const asked = ["--worksheet", "findings", "--worksheet", "sheath:cable-1"];
  expect(await run(["draw", file, ...asked, "--out", once])).toMatchObject({ ok: true, value: { exitCode: 0 } });
  await run(["draw", file, ...asked, "--out", twice]);
  expect(readFileSync(once).equals(readFileSync(twice))).toBe(true);
  const refused = (word: string) => run(["draw", file, "--worksheet", word, "--out", once]);
  expect(await refused("nonsense:1")).toMatchObject({ ok: false, fault: { code: "bad-figure" } });
  expect(await refused("sheath:cable-nowhere")).toMatchObject({ ok: false, fault: { code: "no-figure" } });
});

test("the same route draws the same bytes", async () => {
  const once = join(folder, "once.pdf");
  const twice = join(folder, "twice.pdf");
  await run(["draw", file, "--out", once]);
  await run(["draw", file, "--out", twice]);
  expect(readFileSync(once).equals(readFileSync(twice))).toBe(true);
});

test("sheets are drawn one by one, of the kinds or numbers asked for, under the numbers they have in the set", async () => {
  const sheets = join(folder, "sheets");
  const drawn = await run(["draw", file, "--svg", sheets, "--sheets", "cover, 4,3"]);
  expect(drawn).toMatchObject({ ok: true, value: { exitCode: 0, json: { sheetCount: 3 } } });
  const names = readdirSync(sheets);
  expect(names.map((one) => one.replace(/\d+/, "N"))).toEqual(["N-cover.svg", "N-plan.svg", "N-plan.svg"]);
  for (const name of names) readXml(readFileSync(join(sheets, name), "utf8"));
  expect(await run(["draw", file, "--dxf", sheets, "--sheets", "4"])).toMatchObject({ ok: true });
  expect(readdirSync(sheets)).toContain(names[2]?.replace("svg", "dxf"));
  expect(await run(["draw", file, "--png", sheets, "--sheets", "4"])).toMatchObject({ ok: true });
  const picture = readFileSync(join(sheets, names[2]?.replace("svg", "png") ?? ""));
  // 17 x 11 in at 200 dots an inch
  expect([picture.readUInt32BE(16), picture.readUInt32BE(20)]).toEqual([3400, 2200]);
  const pdf = join(folder, "some.pdf");
  expect(await run(["draw", file, "--sheets", "1,4", "--out", pdf])).toMatchObject({
    ok: true,
    value: { json: { sheetCount: 2 } },
  });
  const refused = (...words: string[]) => run(["draw", file, ...words]);
  expect(await refused("--sheets", "covers")).toMatchObject({ ok: false, fault: { code: "bad-arguments" } });
  expect(await refused("--sheets", "999")).toMatchObject({ ok: false, fault: { code: "no-sheets" } });
  expect(await refused("--svg", sheets, "--out", pdf)).toMatchObject({ ok: false, fault: { code: "bad-arguments" } });
  expect(await refused("--svg", pdf)).toMatchObject({ ok: false, fault: { code: "is-a-file", where: pdf } });
});

test("the set is drawn on the paper asked for, and one nobody sells is refused", async () => {
  const large = join(folder, "large.pdf");
  await run(["draw", file, "--paper", "ansi-d", "--out", large]);
  // 34 x 22 in at 72 points an inch
  expect(readFileSync(large, "latin1")).toContain("/MediaBox [0 0 2448 1584]");
  expect(await run(["draw", file, "--paper", "A9", "--out", large])).toMatchObject({
    ok: false,
    fault: { code: "bad-arguments", where: "--paper" },
  });
});

test("the route goes out as GeoJSON, as KML, as a drawing and as lists", async () => {
  const geojson = join(folder, "town.geojson");
  const ports = join(folder, "ports.csv");
  expect(await run(["export", file, "--geojson", geojson])).toMatchObject({ ok: true });
  expect(JSON.parse(readFileSync(geojson, "utf8"))).toMatchObject({ type: "FeatureCollection" });
  const kml = join(folder, "town.kml");
  expect(await run(["export", file, "--kml", kml])).toMatchObject({ ok: true });
  expect(readFileSync(kml, "utf8")).toContain("<name>Poles</name>");
  const drawing = join(folder, "town.dxf");
  expect(await run(["export", file, "--dxf", drawing])).toMatchObject({ ok: true });
  expect(readFileSync(drawing, "latin1").slice(0, 60)).toContain("SECTION\r\n  2\r\nHEADER");
  expect(await run(["export", file, "--dxf", drawing, "--geojson", geojson])).toMatchObject({
    ok: false,
    fault: { code: "bad-arguments" },
  });
  expect(await run(["export", file, "--csv", ports, "--list", "port"])).toMatchObject({ ok: true });
  expect(readFileSync(ports, "utf8").split("\n").length).toBeGreaterThan(170);
  expect(await run(["export", file, "--csv", ports, "--list", "nonsense"])).toMatchObject({
    ok: false,
    fault: { code: "unknown-list" },
  });
});

test("the schedules go out as one workbook, or as a list each", async () => {
  const [once, twice] = [join(folder, "town.xlsx"), join(folder, "town-2.xlsx")];
  for (const path of [once, twice]) expect(await run(["export", file, "--xlsx", path])).toMatchObject({ ok: true });
  expect(readFileSync(once).equals(readFileSync(twice))).toBe(true);
  const sheets = await readWorkbook(readFileSync(once));
  expect(sheets[0]?.data).toContainEqual(["File", "town.strand"]);
  const lists = join(folder, "schedules");
  expect(await run(["export", file, "--schedules", lists])).toMatchObject({ ok: true });
  expect(readdirSync(lists).sort()).toEqual(
    sheets
      .slice(1)
      .map((one) => `${one.sheet.toLowerCase().replaceAll(" ", "-")}.csv`)
      .sort(),
  );
});

test("a dry run tells what an import would do and does nothing", async () => {
  const other = join(folder, "dry.strand");
  await run(["new", other]);
  expect(await run(["import", other, "--poles", list("poles"), "--dry-run"])).toMatchObject({
    ok: true,
    value: { json: [{ addedCount: 50 }] },
  });
  expect(await run(["export", other, "--csv", join(folder, "dry.csv"), "--list", "pole"])).toMatchObject({ ok: true });
  expect(readFileSync(join(folder, "dry.csv"), "utf8").trim().split("\n")).toHaveLength(1);
});

test("a file that cannot be read is a fault that names it, and leaves no route behind", async () => {
  expect(await run(["import", file, "--poles", join(folder, "nowhere.csv")])).toMatchObject({
    ok: false,
    fault: { code: "no-file" },
  });
  expect(await run(["check", join(folder, "nowhere.strand")])).toMatchObject({ ok: false, fault: { code: "no-file" } });
  expect(existsSync(join(folder, "nowhere.strand"))).toBe(false);
});

test("a word too many or an option nobody knows is a fault that shows the usage", async () => {
  expect(await run(["check"])).toMatchObject({
    ok: false,
    fault: { code: "bad-arguments", mend: "Write: strandwright check FILE.strand" },
  });
  expect(await run(["check", file, "--loud"])).toMatchObject({ ok: false, fault: { code: "bad-arguments" } });
});

test("a formula runs by itself: the thirteenth fiber of a cable with tubes of twelve is the blue one in the orange tube", async () => {
  const answer = await run(["calc", "colour"], '{"fiber": 13, "fibersPerTube": 12}');
  expect(answer).toMatchObject({
    ok: true,
    value: { json: { tube: 2, tubeColour: "orange", fiberInTube: 1, fiberColour: "blue" } },
  });
  const heavy = '{"diameterM": 0.017272, "weightNPerM": 2.948, "district": "NESC heavy"}';
  expect(await run(["calc", "load"], heavy)).toMatchObject({
    ok: true,
    value: { json: { totalNPerM: expect.closeTo(20.293, 2), district: { mark: "memory" } } },
  });
  expect(await run(["calc", "colour"], "{")).toMatchObject({ ok: false, fault: { code: "not-json" } });
  expect(await run(["calc", "colour"], '{"fiber": 0, "fibersPerTube": 12}')).toMatchObject({ ok: false });
  const traces = join(import.meta.dirname, "../fixtures/traces");
  const trace = await run(["calc", "trace", join(traces, "trace-1.sor")]);
  expect(trace).toMatchObject({
    ok: true,
    value: { json: { version: "2.00", wavelengthNm: 1310, totalLossDb: 6.39 } },
  });
  const missing = await run(["calc", "trace", join(traces, "gone.sor")]);
  expect(missing).toMatchObject({ ok: false, fault: { where: join(traces, "gone.sor") } });
  expect(await run(["calc", "--list"])).toMatchObject({
    ok: true,
    value: { json: expect.arrayContaining([expect.objectContaining({ id: "sag" })]) },
  });
});

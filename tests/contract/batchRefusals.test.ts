import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { attempt } from "../../electron/batch/attempt.ts";
import type { Desk, Verb } from "../../electron/batch/verb.ts";
import { verbs } from "../../electron/batch/verbs.ts";
import { runJobHere } from "../../electron/host/jobs.ts";

const folder = mkdtempSync(join(tmpdir(), "strand-refusals-"));
const said: string[] = [];
let file: string;
let number = 0;

const desk: Desk = {
  stamp: { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" },
  assetsFolder: join(import.meta.dirname, "../../assets"),
  windowFolder: folder,
  runJob: runJobHere,
  readInput: async () => "",
  say: (line) => said.push(line),
};

async function run(...line: readonly string[]) {
  const verb = verbs.find((one) => one.name === line[0]);
  if (!verb) throw new Error(`no verb ${line[0]}`);
  return attempt(verb, line.slice(1), desk);
}

function written(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

async function poleTags(): Promise<string[]> {
  const out = join(folder, "poles-out.csv");
  await run("export", file, "--csv", out, "--list", "pole");
  const [, ...rows] = readFileSync(out, "utf8").trim().split("\n");
  return rows.map((row) => row.split(",")[2] ?? "");
}

beforeAll(() => {
  written("poles.csv", "Tag,Lat,Lon,Order\nP1,42.1,-71.1,1\nP2,42.1003,-71.1,2\nP3,42.1006,-71.1,3\n");
  written("homes.csv", "Address,Lat,Lon\n1 Elm St,42.10005,-71.1002\n3 Elm St,42.1004,-71.1002\n");
});
beforeEach(async () => {
  number += 1;
  file = join(folder, `route-${number}.strand`);
  expect(await run("new", file)).toMatchObject({ ok: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

const poles = () => join(folder, "poles.csv");
const homes = () => join(folder, "homes.csv");

test("neither an export nor a drawing writes over a route file, its own or another", async () => {
  await run("import", file, "--poles", poles());
  const before = readFileSync(file);
  const other = join(folder, `other-${number}.strand`);
  await run("new", other);
  const refusal = { ok: false, fault: { code: "is-a-route" } };
  expect(await run("export", file, "--csv", file, "--list", "pole")).toMatchObject(refusal);
  expect(await run("export", file, "--geojson", other)).toMatchObject(refusal);
  expect(await run("draw", file, "--out", other)).toMatchObject(refusal);
  expect(readFileSync(file).equals(before)).toBe(true);
  expect(await run("check", other)).toMatchObject({ ok: true });
});

test("a place that cannot be written to is told in plain words", async () => {
  await run("import", file, "--poles", poles());
  mkdirSync(join(folder, `taken-${number}`));
  const asFolder = await run("export", file, "--geojson", join(folder, `taken-${number}`));
  expect(asFolder).toMatchObject({
    ok: false,
    fault: { code: "is-a-folder", what: "A folder of that name is there." },
  });
  const nowhere = await run("draw", file, "--out", join(folder, "no", "such", "town.pdf"));
  expect(nowhere).toMatchObject({ ok: false, fault: { code: "no-file", what: "There is no such file or folder." } });
});

test("a new route with a setting nobody knows leaves no file behind", async () => {
  for (const wrong of [
    ["--units", "furlongs"],
    ["--clearance-set", "nowhere"],
  ]) {
    const path = join(folder, `wrong-${wrong[1]}.strand`);
    expect(await run("new", path, ...wrong)).toMatchObject({ ok: false });
    expect(existsSync(path)).toBe(false);
  }
});

test("a new route in a folder that is not there, or under another kind of name, is refused in plain words", async () => {
  expect(await run("new", join(folder, "nowhere", "town.strand"))).toMatchObject({
    ok: false,
    fault: { code: "no-folder", what: "There is no such folder." },
  });
  expect(await run("new", join(folder, "town.txt"))).toMatchObject({ ok: false, fault: { code: "bad-name" } });
  expect(existsSync(join(folder, "town.txt"))).toBe(false);
});

test("where one of several lists is refused, none of them is taken", async () => {
  const bad = written("bad-homes.csv", "Address,Lat,Lon\n1 Elm St,north,-71.1\n");
  expect(await run("import", file, "--poles", poles(), "--units", bad)).toMatchObject({ value: { exitCode: 2 } });
  expect(await poleTags()).toEqual([]);
});

test("a dry run sees the poles of the list before, so that crossings in their spans are not called astray", async () => {
  const crossings = written("ways.csv", "From pole,To pole,Distance m,Surface,Width m\nP1,P2,10,road,7\n");
  expect(await run("import", file, "--poles", poles(), "--crossings", crossings, "--dry-run")).toMatchObject({
    value: { exitCode: 0, json: [{ addedCount: 3 }, { addedCount: 1, bad: [] }] },
  });
  expect(await poleTags()).toEqual([]);
});

test("a refused list tells every bad row, by the word for a row of that file", async () => {
  const collection = {
    type: "FeatureCollection",
    features: [
      { type: "Feature", geometry: null, properties: { tag: "P1" } },
      { type: "Feature", geometry: { type: "Point", coordinates: [-71.1, 42.1] }, properties: { tag: "P2" } },
      null,
    ],
  };
  const refused = await run("import", file, "--poles", written("poles.geojson", JSON.stringify(collection)));
  expect(refused).toMatchObject({
    ok: true,
    value: { exitCode: 2, json: { ok: false, fault: { code: "bad-rows" }, bad: [{ line: 1 }, { line: 3 }] } },
  });
  const words = refused.ok ? refused.value.lines.join("\n") : "";
  expect(words).toContain("feature 1, lon:");
  expect(words).toContain('feature 3 "null":');
});

test("a column map for a kind of list that does not exist is refused, not left aside", async () => {
  expect(await run("import", file, "--poles", poles(), "--map", "poles.tag=Tag")).toMatchObject({
    ok: false,
    fault: { code: "bad-map", where: "poles.tag=Tag" },
  });
});

test("an export is asked for one place, not two", async () => {
  expect(await run("export", file, "--csv", "a.csv", "--list", "pole", "--geojson", "a.geojson")).toMatchObject({
    ok: false,
    fault: { code: "bad-arguments" },
  });
});

test("a route without living units is not strung with a cable sized for nobody", async () => {
  await run("import", file, "--poles", poles());
  expect(await run("layout", file)).toMatchObject({ ok: false, fault: { code: "no-units" } });
});

test("a span that no line reaches from the hub is named by the layout", async () => {
  const apart = written(
    "apart.csv",
    "Tag,Lat,Lon,Line,Order\nP1,42.1,-71.1,A,1\nP2,42.1003,-71.1,A,2\nP3,42.1006,-71.1,A,3\nQ1,42.11,-71.1,B,1\nQ2,42.1103,-71.1,B,2\n",
  );
  await run("import", file, "--poles", apart, "--units", homes());
  expect(await run("layout", file, "--hub", "P1")).toMatchObject({
    ok: true,
    value: { json: { unstrung: [{ fromTag: "Q1", toTag: "Q2" }], unserved: [] } },
  });
});

test("a mistake of the program is a fault and no exit code of a check", async () => {
  const verb: Verb = {
    name: "stumble",
    usage: "",
    help: "",
    run: async () => {
      throw new Error("a screw fell out");
    },
  };
  said.length = 0;
  expect(await attempt(verb, [], desk)).toMatchObject({
    ok: false,
    fault: { code: "program-error", where: "stumble" },
  });
  expect(said.join("\n")).toContain("a screw fell out");
});

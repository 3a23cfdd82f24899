import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../electron/batch/verb.ts";
import { closeoutVerb } from "../../electron/batch/verbs/closeout.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { makeDemoRoute } from "../../electron/host/makeDemoRoute.ts";
import type { Stamp } from "../../electron/host/session.ts";

const assetsFolder = resolve(import.meta.dirname, "../../assets");
const stamp: Stamp = { author: "tester", nowIso: () => "2026-03-02T08:00:00.000Z" };
const desk: Desk = {
  stamp,
  assetsFolder,
  windowFolder: "",
  runJob: runJobHere,
  readInput: async () => "",
  say: () => {},
};

let folder: string;
let route: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "strandwright-closeout-"));
  route = join(folder, "demo.strand");
  const made = await makeDemoRoute(route, assetsFolder, stamp, runJobHere);
  if (!made.ok) throw new Error(made.fault.what);
  made.value.close();
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function run(...args: string[]) {
  const done = await closeoutVerb.run(args, desk);
  if (!done.ok) throw new Error(done.fault.what);
  return done.value;
}

function list(text: string): string {
  const path = join(folder, "readings.csv");
  writeFileSync(path, text);
  return path;
}

test("the status tells every terminal in order along the route, and what is still to be read", async () => {
  const { lines } = await run("status", route);
  expect(lines[0]).toMatch(
    /^T-1 at M-02: 2 poles \(2 designed\), .*16 ports \(16 designed\).*; to be read: .*light 16/,
  );
  expect(lines.at(-1)).toMatch(/^Still to be read: (\d+) of \1$/);
});

test("a list with one bad row is refused whole, with line, column and what would be taken", async () => {
  const path = list("kind,name,reading,value\nterminal,T-1,offset,48 in\nterminal,T-99,offset,36 in\n");
  const { exitCode, lines } = await run("readings", route, path);
  expect(exitCode).toBe(2);
  expect(lines[1]).toMatch(/line 3, name "T-99": The route has no terminal of this name/);
  expect((await run("status", route)).lines.at(-1)).toMatch(/^Still to be read: (\d+) of \1$/);
});

test("a good list is taken down as one edit, and what deviates is told", async () => {
  const path = list("kind,name,reading,value\nterminal,T-1,offset,48 in\nterminal,T-2,offset,36 in\n");
  const { exitCode, lines } = await run("readings", route, path, "--by", "R. Vance");
  expect(exitCode).toBe(0);
  expect(lines).toEqual([
    "Take down 2 readings of readings.csv",
    "  Terminal T-1 was hung farther from pole M-02 than drawn.",
  ]);
});

test("a part the verb does not know is refused", async () => {
  expect((await closeoutVerb.run(["paint"], desk)).ok).toBe(false);
});

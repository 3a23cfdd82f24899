import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { afterEach, beforeEach, expect, test } from "vitest";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { keepFile } from "../../db/keptFiles.ts";
import type { Desk } from "../../electron/batch/verb.ts";
import { deliverVerb } from "../../electron/batch/verbs/deliver.ts";
import { verifyVerb } from "../../electron/batch/verbs/verify.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { smallRoute, withRows } from "../fixtures/route/buildRoute.ts";
import { closedOut } from "../fixtures/route/closedOut.ts";
import { wideJpeg } from "../fixtures/route/pictures.ts";
import { photoOf } from "../fixtures/route/readingRow.ts";
import { withTrace } from "../fixtures/route/tracedRoute.ts";
import { granted, opening } from "./db/scratch.ts";

const noPicture = new Uint8Array([0xff, 0xd8, 0xff, 1, 2, 3]);
const trace = new Uint8Array([7, 7, 7]);
const hashOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");

let folder: string;
let path: string;
const desk = (): Desk => ({
  stamp: { author: "tester", nowIso: () => opening.atIso },
  assetsFolder: "",
  windowFolder: "",
  runJob: runJobHere,
  readInput: async () => "",
  say: () => {},
});

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "strand-delivery-"));
  path = join(folder, "town.strand");
  const traced = withTrace(closedOut(smallRoute()), { keptHash: hashOf(trace) }, []);
  const route = withRows(traced, "photo", [
    { ...photoOf("photo-1"), keptHash: hashOf(wideJpeg) },
    { ...photoOf("photo-2"), keptHash: hashOf(noPicture) },
  ]);
  const file = granted(createRouteFile(path, route, opening));
  for (const bytes of [wideJpeg, noPicture, trace]) keepFile(file.db, bytes);
  file.close();
});
afterEach(() => rmSync(folder, { recursive: true }));

test("a delivery holds drawings, report, tables, traces, photos and the route, each under its hash, the same bytes each time", async () => {
  const out = ["a.zip", "b.zip"].map((name) => join(folder, name));
  for (const place of out) granted(await deliverVerb.run([path, "--out", place], desk()));
  const [first, second] = out.map((place) => readFileSync(place));
  expect(first?.equals(second ?? Buffer.alloc(0))).toBe(true);
  const files = unzipSync(new Uint8Array(first ?? Buffer.alloc(0)));
  const manifest = JSON.parse(new TextDecoder().decode(files["manifest.json"]));
  const names = Object.keys(files).filter((name) => name !== "manifest.json");
  expect(manifest.files.map((one: { name: string }) => one.name).sort()).toEqual(names.sort());
  for (const { name, sha256, byteCount } of manifest.files)
    expect({ name, sha256, byteCount }).toEqual({
      name,
      sha256: hashOf(files[name] ?? new Uint8Array()),
      byteCount: files[name]?.byteLength,
    });
  expect(manifest.leftOut).toEqual([expect.stringContaining("local grid")]);
  expect(names).toEqual(
    expect.arrayContaining(["town as built.pdf", "town closeout report.pdf", "town tables.xlsx", "town.strand"]),
  );
  expect(names.filter((name) => name.startsWith("traces/")).map((name) => name.slice(-12))).toEqual(
    ["C1-F040.sor"].map((one) => ` ${one}`),
  );
  expect(names.filter((name) => /^photos\/.*\.jpg$/.test(name))).toHaveLength(2);
  const report = Buffer.from(files["town closeout report.pdf"] ?? []);
  expect(report.includes(Buffer.from(wideJpeg))).toBe(true);
  expect(report.toString("latin1").match(/\/Subtype \/Image/g)).toHaveLength(1);
  expect(Buffer.from(files["town as built.pdf"] ?? []).includes(Buffer.from(wideJpeg))).toBe(false);
});

test("a delivery into a folder is verified there, and a verb without a place is refused", async () => {
  const out = join(folder, "handed over");
  granted(await deliverVerb.run([path, "--out", out], desk()));
  const told = granted(await verifyVerb.run([join(out, "town.strand")], desk()));
  expect(told.exitCode).toBe(0);
  expect(await deliverVerb.run([path], desk())).toMatchObject({ fault: { code: "bad-arguments" } });
});

import { existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { makeDemo } from "../../assets/demo/makeDemo.ts";
import { contract, type HostEvent, type Method, type Reply, type Request } from "../../core/contract/contract.ts";
import { exportFormats } from "../../core/contract/exportMethods.ts";
import { type Host, openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { makeDemoRoute } from "../../electron/host/makeDemoRoute.ts";
import { createRoute, openRoute } from "../../electron/host/openRoute.ts";
import type { Stamp } from "../../electron/host/session.ts";

const assetsFolder = join(import.meta.dirname, "../../assets");
const stamp: Stamp = { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" };

let folder: string;
let path: string;
let host: Host;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "strand-host-"));
  path = join(folder, "route.strand");
  host = openHost({ runJob: runJobHere, report: () => {} });
});
afterEach(() => {
  host.close();
  rmSync(folder, { recursive: true });
});

async function openDemo(): Promise<string> {
  const made = await makeDemoRoute(path, assetsFolder, stamp, runJobHere);
  if (!made.ok) throw new Error(made.fault.what);
  return host.add(made.value);
}

function openEmpty(): string {
  const made = createRoute(path, assetsFolder, { routeName: "Empty" }, stamp);
  if (!made.ok) throw new Error(made.fault.what);
  return host.add(made.value);
}

/** Asks the host and checks the reply against the contract. */
async function ask<M extends Method>(method: M, request: Request<M>): Promise<Reply<M>> {
  const answer = await host.call(method, request);
  if (!answer.ok) throw new Error(`${answer.fault.code}: ${answer.fault.what}`);
  return contract[method].reply.parse(answer.value) as Reply<M>; // the schema of that very method
}

test("the demo route comes in through the importers, is laid out, and reads back whole", async () => {
  const routeId = await openDemo();
  const { tables, findings, history } = await ask("route.read", { routeId });
  expect(tables.pole?.length).toBeGreaterThanOrEqual(40);
  expect(tables.livingUnit?.length).toBeGreaterThanOrEqual(150);
  expect(tables.terminal?.length).toBeGreaterThan(15);
  expect(findings.length).toBeGreaterThan(4);
  expect(history).toEqual({ undo: "Set guys", redo: null });
});

test("a demo route that was broken off has no file under its name", async () => {
  const breaksOff = async (): Promise<never> => {
    throw new Error("broken off");
  };
  await expect(makeDemoRoute(path, assetsFolder, stamp, breaksOff)).rejects.toThrow("broken off");
  expect(existsSync(path)).toBe(false);
  await openDemo();
  expect(readdirSync(folder).filter((name) => name.startsWith("unfinished"))).toEqual([]);
});

test("a route goes out for other programs, under its own name", async () => {
  const routeId = await openDemo();
  const starts = { xlsx: "PK", dxf: "  0\r\nSECTION", kml: "<?xml", geojson: '{"type":"FeatureCollection"' } as const;
  for (const format of exportFormats) {
    const { fileName, contentBase64 } = await ask("export.file", { routeId, format });
    expect(fileName).toBe(`route.${format}`);
    expect(Buffer.from(contentBase64, "base64").toString("latin1").startsWith(starts[format]), format).toBe(true);
  }
});

test("an empty route has nothing to draw for other programs, and says so", async () => {
  const answer = await host.call("export.file", { routeId: openEmpty(), format: "dxf" });
  expect(answer).toMatchObject({ ok: false, fault: { code: "nothing-to-draw", mend: "Import poles first." } });
});

test("rows that change nothing are no edit to undo", async () => {
  const routeId = await openDemo();
  const before = (await ask("route.read", { routeId })).history;
  await ask("layout.run", { routeId, jobId: "again" });
  await ask("edit.undo", { routeId });
  const after = (await ask("route.read", { routeId })).history;
  expect([before.undo, after.redo]).toEqual(["Set guys", "Set guys"]);
  expect(after.undo).toBe("Enter the survey notes");
});

test("an edit is told to every window with what it did to the findings", async () => {
  const routeId = await openDemo();
  const events: HostEvent[] = [];
  host.on((event) => events.push(event));
  const { tables } = await ask("route.read", { routeId });
  const terminal = tables.terminal?.[0];
  const reply = await ask("edit.run", {
    routeId,
    commandId: "terminal.move",
    input: { terminalId: terminal?.id, spanId: terminal?.spanId, offsetM: Number(terminal?.offsetM) + 0.3 },
  });
  expect(reply.found.map((one) => one.ruleId)).toContain("terminal-standoff");
  expect(events).toEqual([{ kind: "edited", routeId, edit: reply }]);
  const undone = await ask("edit.undo", { routeId });
  expect(new Set(undone.gone)).toEqual(new Set(reply.found.map((one) => one.key)));
});

test("undo is still there after the file was closed and opened again", async () => {
  const routeId = await openDemo();
  const before = (await ask("route.read", { routeId })).tables;
  await ask("edit.run", { routeId, commandId: "settings.set", input: { values: { sparePortCount: 2 } } });
  host.close();
  const again = openRoute(path, stamp);
  if (!again.ok) throw new Error(again.fault.what);
  host = openHost({ runJob: runJobHere, report: () => {} });
  const reopened = host.add(again.value);
  await ask("edit.undo", { routeId: reopened });
  const after = await ask("route.read", { routeId: reopened });
  expect(after.tables).toEqual(before);
  expect(after.history.redo).not.toBeNull();
});

test("an edit that cannot be is a fault and changes nothing", async () => {
  const routeId = await openDemo();
  const before = await ask("route.read", { routeId });
  const answer = await host.call("edit.run", {
    routeId,
    commandId: "terminal.move",
    input: { terminalId: "no-such", spanId: "x", offsetM: 1 },
  });
  expect(answer).toMatchObject({ ok: false });
  expect(await ask("route.read", { routeId })).toEqual(before);
});

test("an import is planned without being done, and refused whole where a row is bad", async () => {
  const routeId = openEmpty();
  const text = `${makeDemo(20).poles}X-1,not a number,-94,Main,99,,30,4,Us,250\n`;
  const request = {
    routeId,
    fileName: "poles.csv",
    contentBase64: Buffer.from(text).toString("base64"),
    choices: { kind: "pole", onBad: "refuse", onExisting: "skip" },
  } as const;
  const plan = await ask("import.plan", request);
  expect(plan.problem).toMatchObject({ code: "bad-rows" });
  expect(plan.bad).toHaveLength(1);
  expect(plan.bad[0]).toMatchObject({ file: "poles.csv", line: 52, value: "not a number" });
  expect(await host.call("import.take", request)).toMatchObject({ ok: false, fault: { code: "bad-rows" } });
  expect((await ask("route.read", { routeId })).tables.pole).toEqual([]);
  await ask("import.take", { ...request, choices: { ...request.choices, onBad: "takeGood" } });
  expect((await ask("route.read", { routeId })).tables.pole).toHaveLength(50);
});

test("the drawing set comes back as a PDF and as pictures of its sheets", async () => {
  const routeId = await openDemo();
  const { pdfBase64, fileName } = await ask("draw.pdf", { routeId, jobId: "job-1" });
  expect(fileName).toBe("route.pdf");
  expect(Buffer.from(pdfBase64, "base64").subarray(0, 5).toString()).toBe("%PDF-");
  const { sheets, drawnId } = await ask("draw.sheets", { routeId, jobId: "job-2" });
  expect(sheets.length).toBeGreaterThan(30);
  for (const { number } of sheets) {
    expect((await ask("draw.sheet", { routeId, drawnId, number })).svg).toMatch(/^<svg/);
  }
});

test("a set that is drawn tells which kind of its sheets is prepared, which sheet is drawn and which is written", async () => {
  const routeId = await openDemo();
  const told: { readonly partFrac: number; readonly words: string }[] = [];
  host.on((event) => {
    if (event.kind === "progress") told.push({ partFrac: event.doneCount / event.totalCount, words: event.words });
  });
  const { sheets } = await ask("draw.sheets", { routeId, jobId: "job" });
  const words = told.map((one) => one.words);
  expect(words[0]).toMatch(/^Cover, kind 1 of \d+$/);
  expect(words).toContain(`sheet 1 of ${sheets.length}`);
  expect(words.at(-1)).toBe(`writing sheet ${sheets.length} of ${sheets.length}`);
  const parts = told.map((one) => one.partFrac);
  expect(parts).toEqual([...parts].sort((a, b) => a - b));
  expect(parts.at(-1)).toBe(1);
});

test("sheets of a preview are kept for two windows, and the third takes the place of the first", async () => {
  const routeId = await openDemo();
  const cover = (drawnId: string) => host.call("draw.sheet", { routeId, drawnId, number: "1" });
  for (const jobId of ["first", "second"]) await ask("draw.sheets", { routeId, jobId, sheets: ["cover"] });
  expect(await cover("first")).toMatchObject({ ok: true });
  await ask("draw.sheets", { routeId, jobId: "third", sheets: ["cover"] });
  expect(await cover("first")).toMatchObject({ ok: false, fault: { code: "no-drawing" } });
  expect(await cover("second")).toMatchObject({ ok: true });
});

test("laying out a second time changes nothing", async () => {
  const routeId = await openDemo();
  const { edit, unserved, cost, costBound } = await ask("layout.run", { routeId, jobId: "job-1" });
  expect(edit.rows).toEqual([]);
  expect(unserved).toHaveLength(1);
  expect(costBound).toBe(cost);
});

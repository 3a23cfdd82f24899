import { existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { contract, type HostEvent, type Method, type Reply, type Request } from "../../core/contract/contract.ts";
import { listBackups } from "../../db/backup.ts";
import { type Host, openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { createRoute } from "../../electron/host/openRoute.ts";

const assetsFolder = join(import.meta.dirname, "../../assets");

let folder: string;
let home: string;
let nowMs: number;
let hosts: Host[];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "strand-files-"));
  home = join(folder, "home");
  mkdirSync(join(home, "jobs"), { recursive: true });
  nowMs = Date.parse("2026-03-02T08:00:00.000Z");
  hosts = [];
});
afterEach(() => {
  for (const host of hosts) host.close();
  rmSync(folder, { recursive: true });
});

function openFor(author: string): Host {
  const stamp = { author, nowIso: () => new Date(nowMs).toISOString() };
  const files = {
    configFolder: join(folder, `config-${author}`),
    roots: [home],
    assetsFolder,
    demoPath: join(home, "demo.strand"),
    stamp,
  };
  const host = openHost({ runJob: runJobHere, report: () => {}, files });
  hosts.push(host);
  return host;
}

/** Asks a host and checks the reply against the contract. */
async function ask<M extends Method>(host: Host, method: M, request: Request<M>): Promise<Reply<M>> {
  const answer = await host.call(method, request);
  if (!answer.ok) throw new Error(`${answer.fault.code}: ${answer.fault.what}`);
  return contract[method].reply.parse(answer.value) as Reply<M>; // the schema of that very method
}

async function startRoute(host: Host, routeName: string): Promise<string> {
  const { folders } = await ask(host, "files.browse", { folderId: null });
  const jobs = folders.find((one) => one.name === "jobs");
  const start = await ask(host, "files.start", {});
  const { routeId } = await ask(host, "files.create", {
    folderId: jobs?.entryId ?? "",
    fileName: routeName,
    routeName,
    place: "Elm Street",
    unitSystem: "metric",
    clearanceSetId: start.clearanceSets.at(-1)?.id ?? "",
    loadingDistrictId: start.loadingDistricts.at(-1)?.id ?? "",
  });
  return routeId;
}

function edit(host: Host, routeId: string, sparePortCount: number) {
  return host.call("edit.run", { routeId, commandId: "settings.set", input: { values: { sparePortCount } } });
}

async function settingsIn(host: Host, routeId: string) {
  return (await ask(host, "route.read", { routeId })).tables.settings?.[0];
}

test("a route started in a chosen folder has its file there, with its place, units and standards", async () => {
  const host = openFor("Field");
  const routeId = await startRoute(host, "Elm");
  const start = await ask(host, "files.start", {});
  expect(existsSync(join(home, "jobs", "Elm.strand"))).toBe(true);
  expect(await settingsIn(host, routeId)).toMatchObject({
    routeName: "Elm",
    place: "Elm Street",
    unitSystem: "metric",
    clearanceSetId: start.clearanceSets.at(-1)?.id,
    loadingDistrictId: start.loadingDistricts.at(-1)?.id,
  });
  expect(start.clearanceSets.length).toBeGreaterThan(1);
});

test("recent routes come newest first with place and date, also after a new start, and one that is gone is marked", async () => {
  const host = openFor("Field");
  await startRoute(host, "Elm");
  nowMs += 60_000;
  const oak = await startRoute(host, "Oak");
  await ask(host, "files.close", { routeId: oak });
  host.close();
  rmSync(join(home, "jobs", "Oak.strand"));
  const again = openFor("Field");
  const { recent } = await ask(again, "files.start", {});
  expect(
    recent.map(({ routeName, place, isMissing, openedAtIso }) => [routeName, place, isMissing, openedAtIso]),
  ).toEqual([
    ["Oak", "Elm Street", true, "2026-03-02T08:01:00.000Z"],
    ["Elm", "Elm Street", false, "2026-03-02T08:00:00.000Z"],
  ]);
  const gone = await again.call("files.openRecent", { recentId: recent[0]?.recentId });
  expect(gone).toMatchObject({ ok: false, fault: { code: "no-file" } });
  await ask(again, "files.openRecent", { recentId: recent[1]?.recentId ?? "" });
  expect((await ask(again, "route.list", {})).routes.map((one) => one.routeName)).toEqual(["Elm"]);
});

test("the page lists folders below the home folder and nothing above or beside it", async () => {
  const host = openFor("Field");
  const outside = join(folder, "outside");
  mkdirSync(outside);
  writeFileSync(join(outside, "secret.strand"), "");
  symlinkSync(outside, join(home, "way out"));
  mkdirSync(join(home, ".hidden"));
  const listing = await ask(host, "files.browse", { folderId: null });
  expect(listing.folders.map((one) => one.name)).toEqual(["jobs"]);
  expect(listing.parentId).toBeNull();
  for (const folderId of [outside, "..", "/", join(home, "way out")]) {
    expect(await host.call("files.browse", { folderId })).toMatchObject({ ok: false, fault: { code: "not-listed" } });
  }
  expect(await host.call("files.open", { entryId: join(outside, "secret.strand") })).toMatchObject({ ok: false });
  const [jobs] = listing.folders;
  const into = await ask(host, "files.browse", { folderId: jobs?.entryId ?? "" });
  expect(into.parentId).toBe(listing.folder.entryId);
});

test("a file name that leads elsewhere is refused", async () => {
  const host = openFor("Field");
  const routeId = await startRoute(host, "Elm");
  const { folder: there } = await ask(host, "files.browse", { folderId: null });
  for (const fileName of ["../../Elm", "a/b", "C:\\x", "..", "", ".hidden", "what?"]) {
    const refused = await host.call("files.saveCopy", { routeId, folderId: there.entryId, fileName });
    expect(refused).toMatchObject({ ok: false, fault: { code: "bad-name" } });
  }
});

test("two routes are open at once, and closing one leaves the other", async () => {
  const host = openFor("Field");
  const elm = await startRoute(host, "Elm");
  const oak = await startRoute(host, "Oak");
  const events: HostEvent[] = [];
  host.on((event) => events.push(event));
  await edit(host, oak, 3);
  await ask(host, "files.close", { routeId: elm });
  expect((await ask(host, "route.list", {})).routes).toEqual([
    { routeId: oak, fileName: "Oak.strand", routeName: "Oak" },
  ]);
  expect(events.map((one) => one.kind)).toEqual(["edited", "routes"]);
  const ash = await startRoute(host, "Ash");
  expect(new Set([elm, oak, ash]).size).toBe(3);
  const { recent } = await ask(host, "files.start", {});
  const oakAgain = recent.find((one) => one.routeName === "Oak")?.recentId ?? "";
  expect(await ask(host, "files.openRecent", { recentId: oakAgain })).toEqual({ routeId: oak });
});

test("a second opener is told who has the file and since when, may look, and may edit once it is free", async () => {
  const field = openFor("Field");
  const elm = await startRoute(field, "Elm");
  nowMs += 3_600_000;
  const office = openFor("Office");
  const { folders } = await ask(office, "files.browse", { folderId: null });
  const { routeFiles } = await ask(office, "files.browse", { folderId: folders[0]?.entryId ?? "" });
  const { routeId } = await ask(office, "files.open", { entryId: routeFiles[0]?.entryId ?? "" });
  const { lookOnly } = await ask(office, "files.state", { routeId });
  expect(lookOnly?.what).toContain("Field has the file open");
  expect(lookOnly?.what).toContain("since 2026-03-02T08:00:00.000Z");
  for (const refused of [
    await edit(office, routeId, 5),
    await office.call("edit.undo", { routeId }),
    await office.call("files.restore", { routeId, backupId: "any" }),
  ]) {
    expect(refused).toMatchObject({ ok: false, fault: { code: "locked" } });
  }
  await edit(field, elm, 4);
  expect(await ask(office, "files.lookAgain", { routeId })).toEqual({ isEditable: false });
  expect(await settingsIn(office, routeId)).toMatchObject({ sparePortCount: 4 });
  await ask(field, "files.close", { routeId: elm });
  expect(await ask(office, "files.lookAgain", { routeId })).toEqual({ isEditable: true });
  expect(await edit(office, routeId, 5)).toMatchObject({ ok: true });
});

test("a copy is made on opening and after twenty minutes of editing, and ten are kept", async () => {
  const host = openFor("Field");
  const routeId = await startRoute(host, "Elm");
  const path = join(home, "jobs", "Elm.strand");
  expect(listBackups(path)).toHaveLength(1);
  nowMs += 19 * 60_000;
  await edit(host, routeId, 1);
  expect(listBackups(path)).toHaveLength(1);
  for (let time = 0; time < 12; time += 1) {
    nowMs += 21 * 60_000;
    await edit(host, routeId, 2 + time);
  }
  const { backups } = await ask(host, "files.backups", { routeId });
  expect(backups).toHaveLength(10);
  expect(backups[0]?.atIso).toBe(new Date(nowMs).toISOString());
  expect(backups.every((one) => one.byteCount > 10_000)).toBe(true);
});

test("opening a file again that nobody edited makes no further copy", async () => {
  const host = openFor("Field");
  const routeId = await startRoute(host, "Elm");
  await ask(host, "files.close", { routeId });
  nowMs += 60_000;
  const { recent } = await ask(host, "files.start", {});
  await ask(host, "files.openRecent", { recentId: recent[0]?.recentId ?? "" });
  expect(listBackups(join(home, "jobs", "Elm.strand"))).toHaveLength(1);
});

test("a restored route holds what the backup held, and what it was before is in the list", async () => {
  const host = openFor("Field");
  const routeId = await startRoute(host, "Elm");
  await edit(host, routeId, 2);
  const before = (await ask(host, "route.read", { routeId })).tables;
  nowMs += 60_000;
  const made = await ask(host, "files.backUp", { routeId });
  nowMs += 60_000;
  await edit(host, routeId, 7);
  const events: HostEvent[] = [];
  host.on((event) => events.push(event));
  nowMs += 60_000;
  await ask(host, "files.restore", { routeId, backupId: made.backupId });
  expect(events).toEqual([{ kind: "replaced", routeId }]);
  expect((await ask(host, "route.read", { routeId })).tables).toEqual(before);
  const [kept] = (await ask(host, "files.backups", { routeId })).backups;
  expect(kept?.atIso).toBe(new Date(nowMs).toISOString());
  nowMs += 60_000;
  await ask(host, "files.restore", { routeId, backupId: kept?.backupId ?? "" });
  expect(await settingsIn(host, routeId)).toMatchObject({ sparePortCount: 7 });
});

test("a copy saved elsewhere opens as a route of its own; one that is looked at only can be copied too", async () => {
  const field = openFor("Field");
  const elm = await startRoute(field, "Elm");
  await edit(field, elm, 6);
  const office = openFor("Office");
  const home = await ask(office, "files.browse", { folderId: null });
  const jobs = await ask(office, "files.browse", { folderId: home.folders[0]?.entryId ?? "" });
  const looked = await ask(office, "files.open", { entryId: jobs.routeFiles[0]?.entryId ?? "" });
  const saved = await ask(office, "files.saveCopy", {
    routeId: looked.routeId,
    folderId: home.folder.entryId,
    fileName: "Elm copy",
  });
  expect(saved.fileName).toBe("Elm copy.strand");
  const there = await ask(office, "files.browse", { folderId: null });
  const { routeId } = await ask(office, "files.open", { entryId: there.routeFiles[0]?.entryId ?? "" });
  expect((await ask(office, "files.state", { routeId })).lookOnly).toBeNull();
  expect(await settingsIn(office, routeId)).toMatchObject({ sparePortCount: 6 });
});

test("the time of the last edit is told, and none before the first", async () => {
  const host = openFor("Field");
  const routeId = await startRoute(host, "Elm");
  expect((await ask(host, "files.state", { routeId })).editedAtIso).toBeNull();
  nowMs += 5_000;
  await edit(host, routeId, 2);
  expect((await ask(host, "files.state", { routeId })).editedAtIso).toBe("2026-03-02T08:00:05.000Z");
});

test("how a list's columns were matched is remembered for lists of the same headings and kind", async () => {
  const list = { kind: "pole", headings: ["Nr", "Lat", "Lon"] } as const;
  await ask(openFor("Field"), "files.keepColumns", { ...list, columns: { tag: "Nr" } });
  const again = openFor("Field");
  expect(await ask(again, "files.columns", { ...list, headings: ["Lon", "Nr", "Lat"] })).toEqual({
    columns: { tag: "Nr" },
  });
  expect(await ask(again, "files.columns", { ...list, headings: ["Nr", "Lat"] })).toEqual({ columns: {} });
  expect(await ask(again, "files.columns", { ...list, kind: "livingUnit" })).toEqual({ columns: {} });
});

test("the guided look is due once on a machine", async () => {
  const host = openFor("Field");
  expect((await ask(host, "files.start", {})).isGuideDue).toBe(true);
  await ask(host, "files.guideSeen", {});
  expect((await ask(openFor("Field"), "files.start", {})).isGuideDue).toBe(false);
});

test("what is remembered may be damaged: the program starts as if it remembered nothing", async () => {
  mkdirSync(join(folder, "config-Field"));
  writeFileSync(join(folder, "config-Field", "recent.json"), "{ half");
  expect((await ask(openFor("Field"), "files.start", {})).recent).toEqual([]);
});

test("a host without places opens nothing from the page and still tells of its own routes", async () => {
  const host = openHost({ runJob: runJobHere, report: () => {} });
  hosts.push(host);
  const stamp = { author: "Field", nowIso: () => "2026-03-02T08:00:00.000Z" };
  const made = createRoute(join(folder, "own.strand"), assetsFolder, { routeName: "Own" }, stamp);
  if (!made.ok) throw new Error(made.fault.what);
  const routeId = host.add(made.value);
  expect(await host.call("files.browse", { folderId: null })).toMatchObject({ ok: false, fault: { code: "no-files" } });
  expect(await ask(host, "files.state", { routeId })).toMatchObject({ folder, lookOnly: null });
  expect(existsSync(join(folder, "own.strand.backups"))).toBe(false);
});

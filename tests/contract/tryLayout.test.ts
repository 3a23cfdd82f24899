import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { contract, type Method, type Reply, type Request } from "../../core/contract/contract.ts";
import { standingRecord } from "../../core/plant/layoutStanding.ts";
import { type Host, openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { makeDemoRoute } from "../../electron/host/makeDemoRoute.ts";
import type { Session } from "../../electron/host/session.ts";

const folder = mkdtempSync(join(tmpdir(), "strand-try-"));
const stamp = { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" };
let host: Host;
let session: Session;
let routeId: string;

beforeAll(async () => {
  const made = await makeDemoRoute(
    join(folder, "demo.strand"),
    join(import.meta.dirname, "../../assets"),
    stamp,
    runJobHere,
  );
  if (!made.ok) throw new Error(made.fault.what);
  session = made.value;
  host = openHost({ runJob: runJobHere, report: () => {} });
  routeId = host.add(session);
});
afterAll(() => {
  host.close();
  rmSync(folder, { recursive: true });
});
beforeEach(() => {
  while (session.history().undo !== "Set guys") session.undo();
});

async function ask<M extends Method>(method: M, request: Request<M>): Promise<Reply<M>> {
  const answer = await host.call(method, request);
  if (!answer.ok) throw new Error(`${answer.fault.code}: ${answer.fault.what}`);
  return contract[method].reply.parse(answer.value) as Reply<M>; // the schema of that very method
}

const shorter = { dropReachM: 70 };

test("a trial changes nothing, and tells both layouts' figures", async () => {
  const before = session.route();
  const { present, other, ended } = await ask("layout.try", { routeId, jobId: "a", variant: shorter });
  expect(session.route()).toBe(before);
  expect(present).toMatchObject({ terminalCount: before.terminal.size, servedCount: 173, unitCount: 174 });
  expect(present.cost).toBeCloseTo(standingRecord(before)?.cost ?? Number.NaN, 6);
  expect(other.longestDropM).toBeLessThanOrEqual(70);
  expect(present.longestDropM).toBeGreaterThan(70);
  expect(other.dropM).toBeLessThan(present.dropM);
  expect(other.searched?.bound).toBeLessThanOrEqual(other.searched?.cost ?? 0);
  expect(other.fillFrac?.[1]).toBeLessThanOrEqual(15 / 16);
  expect(present.strandFrac).toBeGreaterThan(0);
  expect(present.lightMarginDb).not.toBeNull();
  expect(ended).toBe("proven");
});

test("with nothing otherwise both layouts are alike", async () => {
  const { present, other } = await ask("layout.try", { routeId, jobId: "b", variant: {} });
  expect(other).toEqual(present);
});

test("taken whole it is one edit with its standards, its bound stands, and undo puts all back", async () => {
  const before = session.route();
  const tried = await ask("layout.try", { routeId, jobId: "c", variant: shorter });
  const edit = await ask("layout.take", { routeId, trialId: tried.trialId });
  expect(edit.label).toBe("Take the other layout");
  expect(session.plant.settings()).toMatchObject(shorter);
  expect(standingRecord(session.route())).toMatchObject({ cost: tried.other.searched?.cost, ended: "proven" });
  expect(session.route().terminal.size).toBe(tried.other.terminalCount);
  session.undo();
  expect(session.route()).toEqual(before);
});

test("models left out hang nowhere and leave the catalogue when the trial is taken", async () => {
  const [largest] = [...session.route().terminalModel.values()].sort((a, b) => b.portCount - a.portCount);
  const kept = [...session.route().terminalModel.keys()].filter((id) => id !== largest?.id);
  const tried = await ask("layout.try", { routeId, jobId: "d", variant: { modelIds: kept } });
  await ask("layout.take", { routeId, trialId: tried.trialId });
  const after = session.route();
  expect([...after.terminalModel.keys()]).toEqual(kept);
  expect([...after.terminal.values()].some((one) => one.terminalModelId === largest?.id)).toBe(false);
  expect(standingRecord(after)).not.toBeNull();
});

test("taken along two poles it leaves the standards and everything beyond the run", async () => {
  const before = session.route();
  const tried = await ask("layout.try", { routeId, jobId: "e", variant: shorter });
  const ends = [...before.pole.values()].filter((one) => one.tag === "M-05" || one.tag === "M-09").map((one) => one.id);
  const edit = await ask("layout.take", { routeId, trialId: tried.trialId, poleIds: ends });
  expect(edit.label).toBe("Take the other layout along 5 poles");
  expect(session.plant.settings().dropReachM).toBe(before.settings.get("settings")?.dropReachM);
  expect(session.route().drop.size).toBe(before.drop.size);
});

test("whom the cables that hang have no fiber for is told with the reason", async () => {
  const { other, leftOut } = await ask("layout.try", { routeId, jobId: "i", variant: { sparePortCount: 3 } });
  const lacking = leftOut.filter((one) => one.kind === "fibers");
  expect(lacking[0]?.reason).toMatch(/^Cable \S.* has \d+ fibers for \d+/);
  expect(leftOut.reduce((sum, one) => sum + one.count, 0)).toBe(other.unitCount - other.servedCount);
});

test("the terminals and drops of a trial can be had to be shown, and make the route that taking it makes", async () => {
  const before = session.route();
  const tried = await ask("layout.try", { routeId, jobId: "k", variant: shorter });
  const { rows } = await ask("layout.trial", { routeId, trialId: tried.trialId });
  expect(new Set(rows.map((one) => one.table))).toEqual(new Set(["terminal", "drop"]));
  expect(session.route()).toBe(before);
  await ask("layout.take", { routeId, trialId: tried.trialId });
  for (const { table, id, after } of rows) expect(session.route()[table].get(id) ?? null).toEqual(after);
  expect(await host.call("layout.trial", { routeId, trialId: "another" })).toMatchObject({
    ok: false,
    fault: { code: "no-trial" },
  });
});

test("a trial of before the latest, and a model nobody knows, are refused in plain words", async () => {
  await ask("layout.try", { routeId, jobId: "f", variant: {} });
  expect(await host.call("layout.take", { routeId, trialId: "a" })).toMatchObject({
    ok: false,
    fault: { code: "no-trial" },
  });
  const odd = { routeId, jobId: "g", variant: { modelIds: ["nothing"] } };
  expect(await host.call("layout.try", odd)).toMatchObject({ ok: false, fault: { code: "missing-row" } });
});

test("a trial of a route that was changed meanwhile is taken as far as nothing it touches has changed, else refused whole", async () => {
  const tried = await ask("layout.try", { routeId, jobId: "h", variant: shorter });
  const settings = await ask("edit.run", {
    routeId,
    commandId: "settings.set",
    input: { values: { dropReachM: 60 } },
  });
  expect(settings.rows.map((one) => one.table)).toContain("settings");
  expect(await host.call("layout.take", { routeId, trialId: tried.trialId })).toMatchObject({
    ok: false,
    fault: { code: "conflict" },
  });
});

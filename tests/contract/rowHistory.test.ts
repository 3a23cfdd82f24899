import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { createRoute } from "../../electron/host/openRoute.ts";

const assetsFolder = join(import.meta.dirname, "../../assets");
const stamp = { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" };
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "strand-history-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

test("the history of a row holds what touched it, undo among it, and nothing of its neighbour", async () => {
  const host = openHost({ runJob: runJobHere, report: () => {} });
  const made = createRoute(join(folder, "route.strand"), assetsFolder, { routeName: "Empty" }, stamp);
  if (!made.ok) throw new Error(made.fault.what);
  const routeId = host.add(made.value);
  const run = (commandId: string, input: object) => host.call("edit.run", { routeId, commandId, input });
  const place = { eastM: 0, northM: 0, groundM: null, aboveGroundM: 11 };
  const found = { poleClass: "", owner: "", line: "", order: 0, terminalAllowed: true, note: "" };
  const pole = { tag: "P-1", ...place, ...found };
  await run("pole.add", { ...pole, poleId: "pole-1" });
  await run("pole.add", { ...pole, poleId: "pole-10", tag: "P-10", eastM: 40 });
  const before = await host.call("history.list", { routeId, limit: 10 });
  await run("pole.rename", { poleId: "pole-1", tag: "P-2" });
  await host.call("edit.undo", { routeId });
  const own = await host.call("history.ofRow", { routeId, table: "pole", id: "pole-1", limit: 10 });
  const other = await host.call("history.ofRow", { routeId, table: "pole", id: "pole-10", limit: 10 });
  const list = await host.call("history.list", { routeId, limit: 10 });
  host.close();
  expect(own).toMatchObject({
    ok: true,
    value: { entries: [{ kind: "undo" }, { label: "Rename pole P-1 to P-2" }, {}] },
  });
  expect(other).toMatchObject({ ok: true, value: { entries: [{ kind: "edit" }] } });
  expect(before).toMatchObject({ ok: true, value: { undone: [] } });
  expect(list).toMatchObject({ ok: true, value: { undone: [{ label: "Rename pole P-1 to P-2" }] } });
});

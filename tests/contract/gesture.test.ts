import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import type { Row } from "../../core/model/tables.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import { openRoute } from "../../electron/host/openRoute.ts";
import { openSession, type Session, type Stamp } from "../../electron/host/session.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";

const stamp: Stamp = { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" };
let folder: string;
let path: string;
let session: Session;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "gesture-"));
  path = join(folder, "route.strand");
  const file = createRouteFile(path, smallRoute(), { author: "tester", atIso: stamp.nowIso() });
  if (!file.ok) throw new Error(file.fault.what);
  const opened = openSession(file.value, stamp);
  if (!opened.ok) throw new Error(opened.fault.what);
  session = opened.value;
});
afterEach(() => {
  session.close();
  rmSync(folder, { recursive: true });
});

function terminal(id: string): Row<"terminal"> {
  const row = session.route().terminal.get(id);
  if (!row) throw new Error(`${id} is gone`);
  return row;
}

function nudge(id: string, byM: number, gestureId?: string): void {
  const { spanId, offsetM } = terminal(id);
  const done = session.run("terminal.move", { terminalId: id, spanId, offsetM: offsetM + byM }, gestureId);
  if (!done.ok) throw new Error(done.fault.what);
}

test("five nudges of one gesture are taken back by one undo and made again by one redo", () => {
  const startM = terminal("terminal-1").offsetM;
  for (let count = 0; count < 5; count += 1) nudge("terminal-1", 0.1, "held-1");
  const endM = terminal("terminal-1").offsetM;
  expect(endM).toBeCloseTo(startM + 0.5, 9);
  session.undo();
  expect(terminal("terminal-1").offsetM).toBe(startM);
  session.redo();
  expect(terminal("terminal-1").offsetM).toBe(endM);
});

test("two gestures, and an edit between two nudges of one gesture, stay steps of their own", () => {
  nudge("terminal-1", 0.1, "held-1");
  nudge("terminal-1", 0.1, "held-2");
  nudge("terminal-1", 0.1);
  nudge("terminal-1", 0.1, "held-2");
  const heights: number[] = [];
  for (let count = 0; count < 4; count += 1) {
    heights.push(terminal("terminal-1").offsetM);
    expect(session.undo().ok).toBe(true);
  }
  expect(new Set(heights).size).toBe(4);
  expect(session.route()).toEqual(smallRoute());
  expect(session.undo()).toMatchObject({ ok: false, fault: { code: "nothing-to-undo" } });
});

test("a gesture does not reach over a restart, and its merged step is still undone after one", () => {
  for (let count = 0; count < 3; count += 1) nudge("terminal-1", 0.1, "held-1");
  session.close();
  const again = openRoute(path, stamp);
  if (!again.ok) throw new Error(again.fault.what);
  session = again.value;
  nudge("terminal-1", 0.1, "held-1");
  session.undo();
  session.undo();
  expect(session.route()).toEqual(smallRoute());
});

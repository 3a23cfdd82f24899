import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { contract, type Method, type Reply, type Request } from "../../core/contract/contract.ts";
import { createRouteFile } from "../../db/createRouteFile.ts";
import type { Desk } from "../../electron/batch/verb.ts";
import { drawVerb } from "../../electron/batch/verbs/draw.ts";
import { revisionVerb } from "../../electron/batch/verbs/revision.ts";
import { openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { openRoute } from "../../electron/host/openRoute.ts";
import type { Session } from "../../electron/host/session.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";
import { opening } from "./db/scratch.ts";

const stamp = { author: "tester", nowIso: () => "2030-01-02T03:04:05.000Z" };
const date = { by: "Ann", dateIso: "2030-01-02" };

let folder: string;
let path: string;
let session: Session;
let host: ReturnType<typeof openHost>;
let routeId: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "strand-revisions-"));
  path = join(folder, "route.strand");
  const made = createRouteFile(path, smallRoute(), opening);
  if (!made.ok) throw new Error(made.fault.what);
  made.value.close();
  host = openHost({ runJob: runJobHere, report: () => {} });
  open();
});
afterEach(() => {
  host.close();
  rmSync(folder, { recursive: true });
});

function open(): void {
  const opened = openRoute(path, stamp);
  if (!opened.ok) throw new Error(opened.fault.what);
  session = opened.value;
  routeId = host.add(session);
}

async function ask<M extends Method>(method: M, request: Request<M>): Promise<Reply<M>> {
  const answer = await host.call(method, request);
  if (!answer.ok) throw new Error(`${answer.fault.code}: ${answer.fault.what}`);
  return contract[method].reply.parse(answer.value) as Reply<M>; // the schema of that very method
}

function run(commandId: string, input: object): void {
  const done = session.run(commandId, input);
  if (!done.ok) throw new Error(done.fault.what);
}

function issue(letter: string): void {
  run("revision.issue", { revisionId: `revision-${letter}`, letter, checkedBy: "", reason: "For review", ...date });
}

function moveTerminal(offsetM: number): void {
  run("terminal.move", {
    terminalId: "terminal-1",
    spanId: session.route().terminal.get("terminal-1")?.spanId,
    offsetM,
  });
}

/** The sheets of a state of the route, with what stands on each. */
async function draw(revisionId?: string) {
  const wanted = { routeId, jobId: "job", ...(revisionId === undefined ? {} : { revisionId }) };
  const { drawnId, revision, sheets } = await ask("draw.sheets", wanted);
  const read = sheets.map(async (one) => ({
    ...one,
    ...(await ask("draw.sheet", { routeId, drawnId, number: one.number })),
  }));
  return { revision, sheets: await Promise.all(read) };
}

test("a revision is drawn as it was issued, to the letter, whatever was edited and issued since", async () => {
  issue("A");
  const whenIssued = await draw();
  expect(whenIssued.revision).toBe("Revision A");
  moveTerminal(5);
  expect((await draw()).revision).toBe("After revision A");
  run("terminal.remove", { terminalId: "terminal-2" });
  issue("B");
  run("settings.set", { values: { standoffM: 1.2 } });
  expect(await draw("revision-A")).toEqual(whenIssued);
});

test("a frozen revision shows that it was approved, and that it was made void, after it was issued", async () => {
  issue("A");
  moveTerminal(5);
  run("revision.approve", { revisionId: "revision-A", ...date });
  const texts = async () => (await draw("revision-A")).sheets[0]?.svg ?? "";
  expect(await texts()).not.toContain("Preliminary");
  run("revision.void", { revisionId: "revision-A", reason: "Wrong list", ...date });
  expect(await texts()).toContain(">Void<");
});

test("what changed is told against the last revision that is not void; what was changed back is not told", async () => {
  issue("A");
  const { offsetM = 1 } = session.route().terminal.get("terminal-1") ?? {};
  moveTerminal(5);
  issue("B");
  run("revision.void", { revisionId: "revision-B", reason: "Wrong list", ...date });
  moveTerminal(6);
  const told = await ask("revision.changes", { routeId });
  expect(told).toMatchObject({ revisionId: null, sinceLetter: "A" });
  expect(told.groups.map((one) => one.heading)).toContain("Terminals");
  moveTerminal(offsetM);
  expect((await ask("revision.changes", { routeId })).groups).toEqual([]);
});

test("an issue taken back is no revision; made again it is the one it was", async () => {
  issue("A");
  const whenIssued = await draw();
  session.undo();
  expect((await draw()).revision).toBe("Not issued");
  session.redo();
  moveTerminal(5);
  expect(await draw("revision-A")).toEqual(whenIssued);
});

test("the letter of a revision taken back is spent: the next one takes another, and only redo brings it again", async () => {
  issue("A");
  session.undo();
  moveTerminal(5);
  const other = { revisionId: "revision-other", letter: "a", checkedBy: "", reason: "Terminal moved", ...date };
  expect(session.run("revision.issue", other)).toMatchObject({ ok: false, fault: { code: "taken-letter" } });
  expect((await ask("revision.changes", { routeId })).nextLetter).toBe("B");
  run("revision.issue", { ...other, letter: "B" });
  session.undo();
  session.redo();
  expect([...session.route().revision.values()].map((one) => one.letter)).toEqual(["B"]);
  expect((await ask("revision.changes", { routeId })).nextLetter).toBe("C");
});

test("on the command line a revision is issued, told, drawn, approved and made void; a letter nobody issued is refused", async () => {
  host.close();
  const desk: Desk = {
    stamp,
    assetsFolder: "",
    windowFolder: "",
    runJob: runJobHere,
    readInput: async () => "",
    say: () => {},
  };
  const revision = async (...args: string[]) => {
    const done = await revisionVerb.run([path, ...args], desk);
    return done.ok ? done.value.lines : done.fault.code;
  };
  expect(await revision()).toEqual(["No revision is issued."]);
  expect(await revision("--issue", "A", "--by", "Ann", "--reason", "For review")).toEqual(["Issue revision A"]);
  expect(await revision("--issue", "A")).toBe("taken-letter");
  open();
  moveTerminal(5);
  session.close();
  const lines = await revision();
  expect(lines).toContain("A  2030-01-02  Ann  For review  (not approved)");
  expect(lines).toContain("  Terminals");
  expect(await revision("--approve", "a", "--by", "Cleo")).toEqual(["Approve revision A, by Cleo"]);
  expect(await revision("--void", "A", "--reason", "Wrong list")).toEqual(["Void revision A"]);
  expect(await revision("--void", "A", "--approve", "A")).toBe("bad-arguments");
  const out = join(folder, "a.pdf");
  expect(await drawVerb.run([path, "--revision", "A", "--out", out], desk)).toMatchObject({ ok: true });
  expect(await drawVerb.run([path, "--revision", "C"], desk)).toMatchObject({ fault: { code: "no-such-revision" } });
});

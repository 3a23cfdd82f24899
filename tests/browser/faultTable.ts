import { copyFileSync, mkdirSync, readFileSync, truncateSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { packetFormat, packetVersion } from "../../core/closeout/packet/packetFormat.ts";
import { applyChange } from "../../core/edits/change.ts";
import { type Fault, ok, type Result } from "../../core/model/result.ts";
import { cablesInSpan } from "../../core/plant/cablePath.ts";
import { portsOf } from "../../core/plant/terminalView.ts";
import { onDisk } from "../../db/sqliteFault.ts";
import { openFolders } from "../../electron/host/folders.ts";
import { openHost } from "../../electron/host/host.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { layOutRoute } from "../../electron/host/layOutRoute.ts";
import { createRoute, openRoute } from "../../electron/host/openRoute.ts";
import type { Session, Stamp } from "../../electron/host/session.ts";

type Answer = Result<unknown> | Promise<Result<unknown>>;
/** Tries that may be refused, among them one refused for the reason looked for. */
type Tries = (session: Session, folder: string) => Iterable<Answer>;

const assets = resolve(import.meta.dirname, "../../assets");
const stamp: Stamp = { author: "tester", nowIso: () => "2026-03-02T08:00:00.000Z" };
const at = "2026-03-02T08:00:00.000Z";

const first = <T>(rows: ReadonlyMap<string, T>): T => {
  const [row] = rows.values();
  if (row === undefined) throw new Error("the demo route lacks a row");
  return row;
};
const disk = (code: string): Tries =>
  function* () {
    yield onDisk("/routes/town.strand", () => {
      throw Object.assign(new Error(code), { code });
    });
  };
const issued = (session: Session, letter: string) =>
  session.run("revision.issue", {
    revisionId: `revision-${letter}`,
    letter,
    dateIso: "2026-03-02",
    by: "Ann",
    checkedBy: "",
    reason: "For review",
  });
const punched = (session: Session, punchId: string) =>
  session.run("punch.add", {
    punchId,
    kind: "terminal",
    subjectId: first(session.route().terminal).id,
    port: 0,
    alongId: "",
    what: "Hangs crooked",
    ruleId: "",
    subjects: "",
    assignedTo: "",
    dueIso: "",
    by: "Ann",
    atIso: at,
  });
const traceKept = (told: object = {}) => ({
  traces: [
    {
      fileName: "F1.sor",
      keptHash: "0".repeat(64),
      cableId: null,
      fiber: null,
      fromEnd: "feed",
      leadM: null,
      wavelengthNm: 1550,
      takenIso: "",
      groupIndex: 1.468,
      pulseNs: 30,
      spacingM: 0.5,
      totalLossDb: null,
      returnLossDb: null,
      events: [],
      ...told,
    },
  ],
  by: "Ann",
  atIso: at,
});
const hostOf = (session: Session) => {
  const host = openHost({ runJob: runJobHere, report: () => {} });
  return { host, routeId: host.add(session) };
};
const logo = (session: Session, fileName: string, bytes: Buffer) => {
  const { host, routeId } = hostOf(session);
  return host.call("logo.take", { routeId, fileName, contentBase64: bytes.toString("base64") });
};
const damagedFile = (folder: string): string => {
  const path = join(folder, "damaged.strand");
  const made = createRoute(join(folder, "whole.strand"), assets, { routeName: "Whole" }, stamp);
  if (made.ok) made.value.close();
  copyFileSync(join(folder, "whole.strand"), path);
  truncateSync(path, 8192);
  return path;
};

/** Every fault the window may be told of, by its code, with what the program itself refuses for that reason. */
export const faultTable: Readonly<Record<string, Tries>> = {
  *"missing-row"(session) {
    const { spanId } = first(session.route().terminal);
    yield session.run("terminal.move", { terminalId: "terminal-gone", spanId, offsetM: 1 });
  },
  *"off-span"(session) {
    const { id: terminalId, spanId } = first(session.route().terminal);
    yield session.run("terminal.move", { terminalId, spanId, offsetM: 1e5 });
  },
  *"off-cable"(session) {
    const { id: terminalId, cableId } = first(session.route().terminal);
    for (const { id: spanId, lengthM } of session.route().span.values()) {
      if (cablesInSpan(session.plant, spanId).includes(cableId)) continue;
      yield session.run("terminal.move", { terminalId, spanId, offsetM: lengthM / 2 });
    }
  },
  *"port-taken"(session) {
    const [one, other] = session.route().drop.values();
    if (one && other)
      yield session.run("drop.move", { dropId: one.id, terminalId: other.terminalId, port: other.port });
  },
  *"port-reserved"(session) {
    const { id: dropId, terminalId: ownId } = first(session.route().drop);
    for (const { id: terminalId } of session.route().terminal.values()) {
      const ports = portsOf(session.plant, terminalId);
      const free = ports.filter((one) => one.dropIds.length === 0);
      if (terminalId === ownId || free.length === 0) continue;
      session.run("terminal.reserve", { terminalId, reservedPortCount: free.length });
      yield session.run("drop.move", { dropId, terminalId, port: free[0]?.port });
    }
  },
  *"no-port"(session) {
    const { id: dropId, terminalId } = first(session.route().drop);
    yield session.run("drop.move", { dropId, terminalId, port: 99 });
  },
  *served(session) {
    const { terminalId, livingUnitId } = first(session.route().drop);
    yield session.run("drop.add", { dropId: "drop-new", terminalId, port: 1, livingUnitId });
  },
  *"too-few-ports"(session) {
    for (const { id: terminalId } of session.route().terminal.values())
      for (const terminalModelId of session.route().terminalModel.keys()) {
        const { portCount } = session.plant.rowOf("terminalModel", terminalModelId);
        if (session.plant.where("drop", "terminalId", terminalId).length > portCount)
          yield session.run("terminal.resize", { terminalId, terminalModelId });
      }
  },
  *"fibers-in-use"(session) {
    const smallest = [...session.route().cableType.values()].sort((a, b) => a.fiberCount - b.fiberCount)[0];
    for (const cableId of session.route().cable.keys())
      yield session.run("cable.resize", { cableId, cableTypeId: smallest?.id });
  },
  *"no-fiber"(session) {
    const { id: terminalId, cableId } = first(session.route().terminal);
    const [splitterId] = session.plant.where("splitter", "terminalId", terminalId);
    yield session.run("fiber.give", {
      fiberUseId: "use-new",
      cableId,
      fiber: 9999,
      terminalId,
      splitterId,
      feedId: null,
    });
  },
  *"fiber-taken"(session) {
    for (const { id, cableId, terminalId, splitterId, feedId } of session.route().fiberUse.values())
      for (const other of session.route().fiberUse.values())
        if (other.id !== id && other.cableId === cableId && splitterId !== null)
          yield session.run("fiber.give", {
            fiberUseId: id,
            cableId,
            fiber: other.fiber,
            terminalId,
            splitterId,
            feedId,
          });
  },
  *"splitter-lit"(session) {
    for (const { cableId, terminalId, splitterId, feedId } of session.route().fiberUse.values())
      for (let fiber = 1; fiber <= 48; fiber += 1)
        if (splitterId !== null && session.plant.whereAll("fiberUse", { cableId, fiber: String(fiber) }).length === 0)
          yield session.run("fiber.give", { fiberUseId: "use-new", cableId, fiber, terminalId, splitterId, feedId });
  },
  *"not-inferred"(session) {
    for (const { id: spanId, origin } of session.route().span.values())
      if (origin !== "inferred") yield session.run("span.confirm", { spanId });
  },
  *"no-length"(session) {
    const { id: fromPoleId } = first(session.route().pole);
    const bare = { lengthM: null, strandSectionId: null, origin: "surveyed", note: "" };
    yield session.run("span.add", { spanId: "span-new", fromPoleId, toPoleId: fromPoleId, ...bare });
  },
  *"no-cable-met"(session) {
    const { id: _, ...plain } = first(session.route().pole);
    for (const [poleId, tag, eastM] of [
      ["pole-x", "X-1", 9000],
      ["pole-y", "X-2", 9040],
    ] as const)
      session.run("pole.add", { ...plain, poleId, tag, eastM });
    const bare = { lengthM: null, strandSectionId: null, origin: "surveyed", note: "" };
    session.run("span.add", { spanId: "span-x", fromPoleId: "pole-x", toPoleId: "pole-y", ...bare });
    yield session.run("lateral.string", { spanId: "span-x" });
  },
  *"taken-id"(session) {
    const { id: terminalId, spanId, terminalModelId } = first(session.route().terminal);
    const { fromPoleId: poleId } = session.plant.rowOf("span", spanId);
    yield session.run("terminal.hang", { terminalId, spanId, poleId, terminalModelId });
  },
  *"place-taken"(session) {
    const { spanId, offsetM } = first(session.route().terminal);
    yield session.run("span.split", { spanId, poleId: "pole-new", tag: "N-1", offsetM, nextSpanId: "span-new" });
  },
  *"not-in-line"(session) {
    for (const poleId of session.route().pole.keys())
      if (spanCount(session, poleId) !== 2) yield session.run("span.join", { poleId });
  },
  *"cable-ends"(session) {
    const { poleId, spanId } = midLine(session);
    const rows = session.plant.where("cableRun", "spanId", spanId).map((id) => ({ table: "cableRun", id }));
    if (!session.run("rows.remove", { rows }).ok) return;
    yield session.run("span.join", { poleId });
    session.undo();
  },
  *"spliced-on"(session) {
    for (const cableId of session.route().cable.keys()) yield tried(session, "cable.reverse", { cableId });
  },
  *"no-run"(session) {
    const { id: cableId } = first(session.route().cable);
    const rows = session.plant.where("cableRun", "cableId", cableId).map((id) => ({ table: "cableRun", id }));
    if (!session.run("rows.remove", { rows }).ok) return;
    yield session.run("cable.reverse", { cableId });
    session.undo();
  },
  *"no-room"(session) {
    const { spanId } = first(session.route().terminal);
    yield session.run("span.measure", { spanId, lengthM: 0.1 });
  },
  *"no-side"(session) {
    for (const terminalId of session.route().terminal.keys()) yield tried(session, "terminal.turn", { terminalId });
  },
  *"in-use"(session) {
    yield session.run("catalogue.remove", { table: "dropType", id: session.plant.settings().dropTypeId });
  },
  *"bad-row"(session) {
    const { id } = first(session.route().dropType);
    yield session.run("catalogue.set", { table: "dropType", id, values: { attenuationDbPerKm: -4 } });
  },
  *"bad-value"(session) {
    const { id } = first(session.route().pole);
    yield session.run("row.set", { table: "pole", id, values: { aboveGroundM: -30 } });
  },
  *"taken-letter"(session) {
    yield issued(session, "D1");
    yield issued(session, "D1");
  },
  *approved(session) {
    issued(session, "D2");
    for (let time = 0; time < 2; time += 1)
      yield session.run("revision.approve", { revisionId: "revision-D2", by: "Ann", dateIso: "2026-03-02" });
  },
  *void(session) {
    issued(session, "D3");
    const why = { revisionId: "revision-D3", by: "Ann", dateIso: "2026-03-02", reason: "Wrong pole list" };
    for (let time = 0; time < 2; time += 1) yield session.run("revision.void", why);
  },
  *issued(session) {
    issued(session, "D4");
    yield session.run("row.remove", { table: "revision", id: "revision-D4" });
  },
  *"gates-shut"(session) {
    yield session.run("signOff.sign", {
      signOffId: "sign-1",
      stage: "built",
      by: "Ann",
      role: "",
      note: "",
      atIso: at,
    });
  },
  *"not-signed"(session) {
    const why = { by: "Ann", reason: "A pole was moved", atIso: at };
    yield session.run("signOff.reopen", { revisionId: "revision-D5", letter: "D5", ...why });
  },
  *"no-such-revision"(session) {
    const { host, routeId } = hostOf(session);
    yield host.call("revision.changes", { routeId, revisionId: "gone" });
  },
  *"no-drawing"(session) {
    const { host, routeId } = hostOf(session);
    yield host.call("draw.sheet", { routeId, drawnId: "gone", number: "1" });
  },
  *"not-a-picture"(session) {
    yield logo(session, "logo.png", Buffer.from("no picture"));
  },
  *"picture-too-large"(session) {
    yield logo(session, "logo.png", Buffer.alloc(500_001));
  },
  *"picture-not-plain"(session) {
    yield logo(session, "logo.svg", Buffer.from('<svg viewBox="0 0 2 1"><text>Marrow Bend</text></svg>'));
  },
  *"bad-template"(session) {
    const { host, routeId } = hostOf(session);
    yield host.call("template.import", { routeId, fileName: "own.json", text: '{"kind":"strandwright template"}' });
  },
  *"not-kept"(session) {
    const { host, routeId } = hostOf(session);
    yield host.call("kept.read", { routeId, hash: "0".repeat(64) });
  },
  *"punch-done"(session) {
    punched(session, "punch-a");
    for (let time = 0; time < 2; time += 1)
      yield session.run("punch.done", { punchId: "punch-a", by: "Ann", atIso: at, note: "" });
  },
  *"punch-open"(session) {
    punched(session, "punch-b");
    yield session.run("punch.reopen", { punchId: "punch-b" });
  },
  *"no-such-packet"(session) {
    const { host, routeId } = hostOf(session);
    yield host.call("packet.write", { routeId, packetId: "gone" });
  },
  *"bad-packet"(session) {
    const { host, routeId } = hostOf(session);
    yield host.call("packet.take", { routeId, fileName: "crew.json", text: "{}" });
  },
  *"newer-packet"(session) {
    const { host, routeId } = hostOf(session);
    const text = JSON.stringify({ format: packetFormat, version: packetVersion + 1 });
    yield host.call("packet.take", { routeId, fileName: "crew.json", text });
  },
  *"kept-already"(session) {
    yield session.run("trace.keep", traceKept());
    yield session.run("trace.keep", traceKept());
  },
  *"beyond-cable"(session) {
    yield session.run(
      "trace.keep",
      traceKept({ keptHash: "1".repeat(64), cableId: first(session.route().cable).id, fiber: 9999 }),
    );
  },
  *guarded(session) {
    const { id } = first(session.route().terminal);
    for (const values of [{ cableId: "cable-2" }, { spanId: "span-2" }])
      yield session.run("row.set", { table: "terminal", id, values });
  },
  *"named-twice"(session) {
    const edit = { table: "pole", id: first(session.route().pole).id, values: { note: "twice" } };
    yield session.run("rows.set", { edits: [edit, edit] });
  },
  *waived(session) {
    const { id } = first(session.route().terminal);
    const waiver = { ruleId: "terminal-standoff", subjects: id, reason: "agreed", by: "R. Hale", atIso: at };
    yield session.run("finding.waive", { waiverId: "waiver-1", ...waiver });
    yield session.run("finding.waive", { waiverId: "waiver-2", ...waiver });
  },
  *"unknown-command"(session) {
    yield session.run("terminal.paint", {});
  },
  *"bad-input"(session) {
    yield session.run("terminal.move", {});
  },
  *conflict(session) {
    const before = first(session.route().pole);
    const old = { ...before, note: "as it was a while ago" };
    yield applyChange(session.route(), { rows: [{ table: "pole", id: before.id, before: old, after: before }] });
  },
  *"no-file"(_, folder) {
    yield openRoute(join(folder, "nowhere.strand"), stamp);
  },
  *"not-a-route"(_, folder) {
    writeFileSync(join(folder, "list.strand"), "pole,height\nP-1,35\n".repeat(20));
    yield openRoute(join(folder, "list.strand"), stamp);
  },
  *"newer-file"(session, folder) {
    const bytes = readFileSync(session.path);
    bytes.writeUInt32BE(9999, 60);
    writeFileSync(join(folder, "newer.strand"), bytes);
    yield openRoute(join(folder, "newer.strand"), stamp);
  },
  *damaged(_, folder) {
    yield openRoute(damagedFile(folder), stamp);
  },
  *locked(session) {
    yield openRoute(session.path, stamp);
  },
  *exists(session) {
    yield createRoute(session.path, assets, { routeName: "Again" }, stamp);
  },
  *"no-folder"(_, folder) {
    yield createRoute(join(folder, "none", "town.strand"), assets, { routeName: "Town" }, stamp);
  },
  *"bad-name"(_, folder) {
    yield createRoute(join(folder, "town.txt"), assets, { routeName: "Town" }, stamp);
  },
  *"is-a-folder"(_, folder) {
    mkdirSync(join(folder, "a-folder.strand"), { recursive: true });
    yield onDisk(join(folder, "a-folder.strand"), () => ok(readFileSync(join(folder, "a-folder.strand"))));
  },
  "disk-full": disk("ENOSPC"),
  "disk-error": disk("EIO"),
  "read-only": disk("EACCES"),
  *"nothing-to-undo"(_, folder) {
    const made = createRoute(join(folder, "fresh.strand"), assets, { routeName: "Fresh" }, stamp);
    if (!made.ok) throw new Error(made.fault.what);
    yield made.value.undo();
    made.value.close();
  },
  *"nothing-to-redo"(session) {
    yield session.redo();
  },
  *"no-units"(_, folder) {
    const made = createRoute(join(folder, "bare.strand"), assets, { routeName: "Bare" }, stamp);
    if (!made.ok) throw new Error(made.fault.what);
    yield layOutRoute(made.value, runJobHere);
  },
  *"no-such-pole"(session) {
    yield layOutRoute(session, runJobHere, { hubTag: "Z-99" });
  },
  *"not-listed"(_, folder) {
    yield openFolders([folder]).pathOf("entry-gone");
  },
  *"no-such-route"(session) {
    yield hostOf(session).host.call("route.read", { routeId: "route-gone" });
  },
  *"no-files"(session) {
    yield hostOf(session).host.call("files.openDemo", {});
  },
  *"unknown-method"(session) {
    yield hostOf(session).host.call("route.paint", {});
  },
  *"bad-request"(session) {
    yield hostOf(session).host.call("edit.run", {});
  },
  *"program-error"(_, folder) {
    const made = createRoute(join(folder, "closed.strand"), assets, { routeName: "Closed" }, stamp);
    if (!made.ok) throw new Error(made.fault.what);
    const { host, routeId } = hostOf(made.value);
    made.value.close();
    yield host.call("edit.undo", { routeId });
  },
};

/** An edit that is taken back where it is not refused. */
function tried(session: Session, command: string, input: object): Result<unknown> {
  const made = session.run(command, input);
  if (made.ok) session.undo();
  return made;
}

/** A pole in the middle of a line, and one of its two spans. */
function midLine(session: Session) {
  for (const poleId of session.route().pole.keys()) {
    const [spanId, ...others] = [...session.route().span.values()]
      .filter((one) => one.fromPoleId === poleId || one.toPoleId === poleId)
      .map((one) => one.id);
    if (spanId !== undefined && others.length === 1) return { poleId, spanId };
  }
  throw new Error("the demo route has no pole with two spans");
}

function spanCount({ plant }: Session, poleId: string): number {
  return plant.where("span", "fromPoleId", poleId).length + plant.where("span", "toPoleId", poleId).length;
}

/** The fault of a code as the program words it. */
export async function faultOf(code: string, session: Session, folder: string): Promise<Fault> {
  for (const answer of faultTable[code]?.(session, folder) ?? []) {
    const refused = await answer;
    if (!refused.ok && refused.fault.code === code) return refused.fault;
  }
  throw new Error(`nothing was refused with ${code}`);
}

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import type { BroughtReading, PacketFile } from "../../core/closeout/packet/packetFile.ts";
import { packetFormat, packetVersion } from "../../core/closeout/packet/packetFormat.ts";
import { subjectOf } from "../../core/closeout/subject.ts";
import { changeThatFills } from "../../core/edits/change.ts";
import { packetVerb } from "../../electron/batch/verbs/packet.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { createRoute, openRoute } from "../../electron/host/openRoute.ts";
import type { Session, Stamp } from "../../electron/host/session.ts";
import { takePacket } from "../../electron/host/takePacket.ts";
import { smallRoute } from "../fixtures/route/buildRoute.ts";

const assetsFolder = join(import.meta.dirname, "../../assets");
const stamp: Stamp = { author: "Office", nowIso: () => "2030-05-01T08:00:00.000Z" };
const segment = (marker: number, ...content: number[]) => [0xff, marker, 0, content.length + 2, ...content];
/** A JPEG of 4 by 3 points in grey: its frame, a scan that holds nothing to speak of, its end. */
const wholeJpeg = Buffer.from([
  0xff,
  0xd8,
  ...segment(0xc0, 8, 0, 3, 0, 4, 1, 1, 0x11, 0),
  ...segment(0xda, 1, 1, 0, 0, 63, 0),
  0,
  0xff,
  0xd9,
]);
const jpeg = wholeJpeg.toString("base64");
let folder: string;
let session: Session;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "strand-packets-"));
  const made = createRoute(join(folder, "route.strand"), assetsFolder, { routeName: "Small" }, stamp);
  if (!made.ok) throw new Error(made.fault.what);
  session = made.value;
  const tables = [
    "pole",
    "span",
    "strandType",
    "strandSection",
    "cableType",
    "cable",
    "splitterType",
    "terminalModel",
    "terminal",
  ];
  const filled = session.take(
    "Fill",
    changeThatFills(smallRoute()).filter(
      (one) => tables.includes(one.table) && !session.route()[one.table].has(one.id),
    ),
  );
  if (!filled.ok) throw new Error(`${filled.fault.what} ${filled.fault.where}`);
  for (const [index, crew] of ["North", "South"].entries()) {
    const packetId = `packet-${index + 1}`;
    const given = session.run("packet.give", {
      packetId,
      crew,
      terminalIds: ["terminal-1"],
      wavelengthsNm: [],
      by: "Office",
      atIso: "2030",
    });
    if (!given.ok) throw new Error(given.fault.what);
  }
});
afterEach(() => {
  session.close();
  rmSync(folder, { recursive: true });
});

const offset = (value: number, by: string): BroughtReading => ({
  ...subjectOf("terminal", "terminal-1"),
  what: "offset",
  wavelengthNm: 0,
  before: null,
  sent: [],
  after: { value, text: "", by, atIso: `2030-05-02T${by === "Ann" ? "10" : "11"}:00:00.000Z` },
});

function fileOf(packetId: string, changes: Partial<PacketFile>): string {
  const file: PacketFile = {
    format: packetFormat,
    version: packetVersion,
    packetId,
    routeName: "Small",
    crew: "North",
    readings: [],
    unread: [],
    photos: [],
    ...changes,
  };
  return JSON.stringify(file);
}

function taken(packetId: string, changes: Partial<PacketFile>) {
  const done = takePacket(session, "crew.json", fileOf(packetId, changes));
  if (!done.ok) throw new Error(done.fault.what);
  return done.value.told;
}

test("two crews that disagree are kept beside each other, and one undo takes a whole packet back", () => {
  expect(taken("packet-1", { readings: [offset(0.9, "Ann")] })).toMatchObject({ takenCount: 1, rivalCount: 0 });
  expect(taken("packet-2", { readings: [offset(0.8, "Bo")] })).toMatchObject({ takenCount: 0, rivalCount: 1 });
  expect(session.route().reading.size).toBe(0);
  expect([...session.route().rivalReading.values()]).toMatchObject([
    { value: 0.9, by: "Ann", packetId: "packet-1" },
    { value: 0.8, by: "Bo", packetId: "packet-2" },
  ]);
  session.undo();
  session.undo();
  expect([session.route().reading.size, session.route().rivalReading.size]).toEqual([0, 0]);
  expect(taken("packet-2", { readings: [offset(0.8, "Bo")] })).toMatchObject({ takenCount: 1 });
});

test("a packet brought again after its readings were decided against brings nothing back", () => {
  taken("packet-1", { readings: [offset(0.9, "Ann")] });
  taken("packet-2", { readings: [offset(0.8, "Bo")] });
  const rival = [...session.route().rivalReading.values()].find((one) => one.by === "Bo")?.id;
  session.run("rival.decide", { rivalId: rival, stands: "brought" });
  expect(taken("packet-2", { readings: [offset(0.8, "Bo")] })).toMatchObject({ alreadyCount: 1, rivalCount: 0 });
  expect(taken("packet-1", { readings: [offset(0.9, "Ann")] })).toMatchObject({ alreadyCount: 1, rivalCount: 0 });
  session.undo();
  expect(session.route().rivalReading.size).toBe(2);
});

test("what cannot be taken is told: a terminal that is gone, a picture that is none, a field that could not be read", () => {
  const photo = {
    ...subjectOf("terminal", "terminal-1"),
    moment: "built",
    caption: "",
    widthPx: 4,
    heightPx: 3,
  } as const;
  const signed = { by: "Ann", atIso: "2030" };
  const script = Buffer.from("<script>alert(1)</script>").toString("base64");
  const told = taken("packet-1", {
    readings: [{ ...offset(0.9, "Ann"), subjectId: "terminal-gone" }],
    unread: [{ label: "Slack left", typed: "3 6 ft", ...signed }],
    photos: [
      { ...photo, ...signed, base64: jpeg },
      { ...photo, ...signed, base64: script },
      { ...photo, ...signed, base64: wholeJpeg.subarray(0, -2).toString("base64") },
    ],
  });
  expect(told).toMatchObject({ takenCount: 0, photoCount: 1 });
  expect(told.refused.map((one) => one.why)).toEqual([
    "It is neither JPEG nor PNG.",
    "The picture is damaged: ask the crew to send it once more.",
    "The page could not read it.",
    "There is no such terminal. It may have been removed since the packet was written.",
  ]);
  expect(told.refused.every((one) => one.what.length > 8)).toBe(true);
});

test("a packet of another route and a file that is none change nothing", () => {
  const before = session.route();
  const code = (text: string) => {
    const done = takePacket(session, "crew.json", text);
    return done.ok ? "taken" : done.fault.code;
  };
  expect(code(fileOf("packet-9", {}))).toBe("no-such-packet");
  expect(code("<html>")).toBe("bad-packet");
  expect(code(JSON.stringify({ format: packetFormat, version: 9 }))).toBe("newer-packet");
  expect(session.route()).toBe(before);
});

test("the batch verb takes in what several crews bring and tells what disagrees", async () => {
  const path = join(folder, "route.strand");
  writeFileSync(join(folder, "ann.json"), fileOf("packet-1", { readings: [offset(0.9, "Ann")] }));
  writeFileSync(join(folder, "bo.json"), fileOf("packet-2", { readings: [offset(0.8, "Bo")] }));
  session.close();
  const desk = {
    stamp,
    assetsFolder,
    windowFolder: folder,
    runJob: runJobHere,
    say: () => {},
    readInput: async () => "",
  };
  const takes = ["ann", "bo"].flatMap((one) => ["--take", join(folder, `${one}.json`)]);
  expect(await packetVerb.run([path, ...takes], desk)).toMatchObject({
    ok: true,
    value: { exitCode: 0, json: [{ takenCount: 1 }, { rivalCount: 1 }] },
  });
  expect(await packetVerb.run([path, ...takes, "--crew", "East"], desk)).toMatchObject({
    fault: { code: "bad-arguments" },
  });
  expect(await packetVerb.run([path, "--crew", "East", "--terminals", "T-99"], desk)).toMatchObject({
    fault: { where: "--terminals" },
  });
  const again = openRoute(path, stamp);
  if (!again.ok) throw new Error(again.fault.what);
  session = again.value;
  expect([session.route().reading.size, session.route().rivalReading.size]).toEqual([0, 2]);
});

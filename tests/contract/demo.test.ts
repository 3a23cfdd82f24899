import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { planted } from "../../assets/demo/planted.ts";
import { asBuiltRows } from "../../core/edits/asBuiltRows.ts";
import { routeWith } from "../../core/layout/rowSet.ts";
import type { ReadingKind } from "../../core/model/closeoutRows.ts";
import { paperNames } from "../../core/model/paperNames.ts";
import { openPlant } from "../../core/plant/plant.ts";
import { openChecker } from "../../core/rules/checker.ts";
import { sheetKinds } from "../../core/sheets/book.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import { terminalFacts } from "../../core/sheets/jobCard/terminalFacts.ts";
import type { DrawingSet } from "../../core/sheets/paper/displayList.ts";
import { outsideBorder, outsidePaper, overlaps, struckTexts } from "../../core/sheets/paper/overlaps.ts";
import { paperOf } from "../../core/sheets/paper/paper.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { makeDemoRoute } from "../../electron/host/makeDemoRoute.ts";
import type { Session } from "../../electron/host/session.ts";
import { closedOut } from "../fixtures/route/closedOut.ts";

const folder = mkdtempSync(join(tmpdir(), "strand-demo-"));
let session: Session;
let set: DrawingSet;

beforeAll(async () => {
  const stamp = { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" };
  const made = await makeDemoRoute(
    join(folder, "demo.strand"),
    join(import.meta.dirname, "../../assets"),
    stamp,
    runJobHere,
  );
  if (!made.ok) throw new Error(made.fault.what);
  session = made.value;
  set = composeSet(session.plant, session.findings());
});
afterAll(() => {
  session.close();
  rmSync(folder, { recursive: true });
});

test.each(paperNames)(
  "no mark of the demo set on %s lies on another's text or runs through it, leaves the border or is lettered under 2 mm",
  (paper) => {
    const { sheets } = composeSet(session.plant, session.findings(), { paper });
    const { border } = paperOf(paper);
    expect(sheets.flatMap((sheet) => overlaps(sheet).map((pair) => [sheet.number, pair]))).toEqual([]);
    expect(sheets.flatMap(struckTexts)).toEqual([]);
    expect(sheets.flatMap((sheet) => outsideBorder(sheet, border).map((mark) => [sheet.number, mark]))).toEqual([]);
    expect(sheets.flatMap(({ marks }) => marks.filter((one) => one.kind === "text" && one.heightMm < 2))).toEqual([]);
  },
);

test("no text of the demo set lies on other text or leaves the paper", () => {
  expect(set.sheets.length).toBeGreaterThan(50);
  expect(set.sheets.flatMap((sheet) => overlaps(sheet).map((pair) => [sheet.number, pair]))).toEqual([]);
  expect(set.sheets.flatMap((sheet) => outsidePaper(sheet).map((mark) => [sheet.number, mark]))).toEqual([]);
});

test.each(["ANSI B", "A3"] as const)(
  "as built, with hangers, coils and heights off their drawing, the demo set on %s is as legible; only redlines run through words",
  (paper) => {
    const done = closedOut(session.route());
    const off = [...done.reading.values()].filter(({ what }, at) => what in builtOffM && at % 4 === 0);
    const reading = new Map([
      ...done.reading,
      ...off.map((one) => [one.id, { ...one, value: (one.value ?? 0) + (builtOffM[one.what] ?? 0) }] as const),
    ]);
    const read = { ...done, reading };
    const rows = asBuiltRows(read);
    expect(rows.length).toBeGreaterThan(20);
    const built = openPlant(routeWith(read, rows));
    const revised = { revisionId: null, since: { letter: "", before: openPlant(read), rows }, isAsBuilt: true };
    const { sheets } = composeSet(built, openChecker(built).findings(), { paper, revised });
    expect(sheets.flatMap(overlaps)).toEqual([]);
    expect(sheets.flatMap(struckTexts)).toEqual([]);
    expect(sheets.flatMap((sheet) => outsideBorder(sheet, paperOf(paper).border))).toEqual([]);
  },
);

const builtOffM: Partial<Readonly<Record<ReadingKind, number>>> = { offset: 0.1524, slack: -0.9, height: -0.2 };

test("the demo set has every kind of sheet, bound in their order, but worksheets and what nobody wrote: changes, notes of the company, and what was built", () => {
  const unwritten = ["worksheet", "revision", "notes", "report"];
  const kinds = set.sheets.map((one) => one.kind).filter((kind, at, all) => kind !== all[at - 1]);
  expect(kinds).toEqual(sheetKinds.filter((kind) => !unwritten.includes(kind)));
});

test("every text of the demo set is words or figures", () => {
  const texts = set.sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
  expect(texts.filter((text) => /\[object|undefined|NaN/.test(text))).toEqual([]);
});

test("no text of the demo set is lower than 2 mm", () => {
  const texts = set.sheets.flatMap((sheet) => sheet.marks.filter((mark) => mark.kind === "text"));
  expect(texts.length).toBeGreaterThan(2_000);
  expect(texts.filter((mark) => mark.heightMm < 2)).toEqual([]);
});

test("every job card names the hub output that lights each of its fibers, behind a closure too", () => {
  const { plant } = session;
  const fibers = [...plant.route().terminal.keys()].flatMap((id) => terminalFacts(plant, id).fibers);
  expect(fibers.filter((one) => one.use.feedId === null).length).toBeGreaterThan(0);
  expect(fibers.filter((one) => one.feedName === "")).toEqual([]);
});

test("the findings are the demo's planted problems, and nothing else", () => {
  const { route } = session;
  const told = session.findings().map((one) => `${one.ruleId}: ${one.message}`);
  const about = (rule: string, ...words: readonly string[]) =>
    told.filter((line) => line.startsWith(`${rule}:`) && words.every((word) => line.includes(word)));
  const expected = [
    about("supply-separation-at-pole", planted.lowPower.pole),
    about("supply-separation-in-span", planted.lowPower.pole),
    about("communication-separation-at-pole", planted.closeTelephone.pole),
    about("crossing-clearance", planted.lowDriveway.from, planted.lowDriveway.to),
    about("crossing-clearance", planted.lowRail.from, planted.lowRail.to),
    about("unit-without-port", "7 Orchard Track"),
    about("crossing-clearance-unknown", planted.unlevelled.from, planted.unlevelled.to),
    about("ground-missing", planted.unlevelled.to),
    about("guy-missing", planted.unguyed.pole),
    about("structure-clearance", planted.nearSign.from, planted.nearSign.to),
    about("sag-beside-neighbour", planted.tautTelephone.from, planted.tautTelephone.to),
  ];
  for (const lines of expected) expect(lines.length).toBeGreaterThan(0);
  expect(expected.flat().sort()).toEqual([...told].sort());
  const short = [...route().span.values()].find((span) => span.lengthM < session.plant.settings().minSpanM);
  expect([...route().terminal.values()].filter((one) => one.spanId === short?.id)).toEqual([]);
});

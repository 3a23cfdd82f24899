import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { ImportChoices } from "../../core/exchange/importOptions.ts";
import { composeSet } from "../../core/sheets/composeSet.ts";
import type { DrawingSet } from "../../core/sheets/paper/displayList.ts";
import { outsideBorder, overlaps, struckTexts } from "../../core/sheets/paper/overlaps.ts";
import { paperOf } from "../../core/sheets/paper/paper.ts";
import { importLabel, planFile } from "../../electron/host/importFile.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import { layOutRoute } from "../../electron/host/layOutRoute.ts";
import { createRoute } from "../../electron/host/openRoute.ts";
import type { Session } from "../../electron/host/session.ts";
import { valueIn } from "../unit/exchange/importRoute.ts";

const folder = mkdtempSync(join(tmpdir(), "strand-real-"));
const place = { routeName: "Pemberton", project: "", place: "", county: "", company: "" };
let session: Session;
let large: DrawingSet;

/** 304 poles and 42 doors of a city, as it publishes them, strung and laid out by the program. */
beforeAll(async () => {
  const stamp = { author: "tester", nowIso: () => "2026-01-02T03:04:05.000Z" };
  session = valueIn(
    createRoute(join(folder, "real.strand"), join(import.meta.dirname, "../../assets"), place, stamp, {}),
  );
  await takeIn("pole", "cambridge-poles.geojson");
  await takeIn("livingUnit", "cambridge-addresses.geojson");
  valueIn(await layOutRoute(session, runJobHere));
  large = composeSet(session.plant, session.findings(), { paper: "ANSI D" });
}, 240_000);
afterAll(() => {
  session.close();
  rmSync(folder, { recursive: true });
});

async function takeIn(kind: ImportChoices["kind"], name: string): Promise<void> {
  const bytes = readFileSync(join(import.meta.dirname, "../fixtures/exchange", name));
  const planned = valueIn(
    await planFile(session.route(), { name, bytes }, { kind, onBad: "takeGood", onExisting: "skip" }),
  );
  if (!planned.plan) throw new Error(`${name} could not be read`);
  valueIn(session.take(importLabel(kind, name), planned.plan.rows));
}

test.each(["ANSI D", "A3"] as const)(
  "on %s no word of a real route's set lies over another, has a line through it, leaves the border or is lettered under 2 mm",
  (paper) => {
    const set = paper === "ANSI D" ? large : composeSet(session.plant, session.findings(), { paper });
    const told = (found: readonly { readonly sheet: string }[]) =>
      found.map((one) => JSON.stringify(one).slice(0, 300));
    expect(told(set.sheets.flatMap(overlaps))).toEqual([]);
    expect(told(set.sheets.flatMap(struckTexts))).toEqual([]);
    const { border } = paperOf(paper);
    expect(set.sheets.flatMap((sheet) => outsideBorder(sheet, border).map((mark) => [sheet.number, mark]))).toEqual([]);
    const texts = set.sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark] : [])));
    expect(texts.filter((one) => one.heightMm < 2 || /NaN|undefined|\[object/.test(one.text))).toEqual([]);
  },
  120_000,
);

test("short laterals share sheets: a route of sixty takes far fewer plans and profiles than it has lines", () => {
  const countOf = (kind: string) => large.sheets.filter((sheet) => sheet.kind === kind).length;
  expect(session.route().cable.size).toBeGreaterThan(50);
  expect(countOf("plan")).toBeLessThan(session.route().cable.size / 2);
  expect(countOf("profile")).toBeLessThan(session.route().cable.size / 2);
  expect(countOf("fiber")).toBeLessThan(5);
  expect(countOf("findings")).toBe(1);
});

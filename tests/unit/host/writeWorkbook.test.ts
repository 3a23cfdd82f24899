import { strFromU8, unzipSync } from "fflate";
import readWorkbook from "read-excel-file/node";
import { expect, test, vi } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { openChecker } from "../../../core/rules/checker.ts";
import type { Cell } from "../../../core/sheets/paper/figure.ts";
import { flatSchedule } from "../../../core/sheets/schedule/schedule.ts";
import { schedules } from "../../../core/sheets/schedule/schedules.ts";
import { writeWorkbook } from "../../../electron/host/writeWorkbook.ts";
import { elementsCalled, readXml } from "../../fixtures/exchange/readXml.ts";
import { changed } from "../../fixtures/route/buildRoute.ts";
import { windingRoute } from "../../fixtures/sheets/windingRoute.ts";

const naughty = '=HYPERLINK("http://example.test","x")';
const [terminalId = ""] = windingRoute().terminal.keys();
const route = changed(windingRoute(), "terminal", terminalId, { name: naughty });
const plant = openPlant(route);
const tables = schedules(plant, openChecker(plant).findings()).map(flatSchedule);
const about = [
  ["Route", "+1 Mill Road"],
  ["Units", "US customary"],
] as const;
const workbook = await writeWorkbook(tables, about);
const files = unzipSync(workbook);
const xml = (name: string) => readXml(strFromU8(files[name] ?? new Uint8Array()));

const plain = (cell: Cell) => (typeof cell === "string" ? cell.trim() || null : cell.value);

test("every schedule of the sheets is there behind a sheet about the file", async () => {
  const sheets = await readWorkbook(Buffer.from(workbook));
  expect(sheets.map((one) => one.sheet)).toEqual([
    "About",
    "Ports and drops",
    "Cables and reels",
    "Bill of materials",
    "Bill with prices",
    "Pole permits",
    "Stringing",
    "Guys and anchors",
    "Bonds and grounds",
    "Splices at the hub",
    "Splices in closures",
    "Findings",
    "Closeout of poles",
    "Closeout of spans",
    "Closeout of terminals",
    "Closeout of ports",
  ]);
  expect(sheets[0]?.data).toEqual(about);
});

test("it reads back as the schedules say: numbers as numbers, words as words, whatever they look like", async () => {
  const sheets = await readWorkbook(Buffer.from(workbook));
  for (const [index, { headings, rows }] of tables.entries()) {
    expect(sheets[index + 1]?.data, tables[index]?.name).toEqual([headings, ...rows.map((row) => row.map(plain))]);
  }
  expect(sheets[1]?.data.flat()).toContain(naughty);
});

test("nothing in it is a formula, and headings stay in view", () => {
  for (const index of tables.keys()) {
    const sheet = xml(`xl/worksheets/sheet${index + 2}.xml`);
    expect(elementsCalled("f", sheet)).toEqual([]);
    expect(elementsCalled("pane", sheet)[0]?.attributes).toMatchObject({ ySplit: "1", state: "frozen" });
  }
});

test("the clock leaves no mark in it", async () => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date("2031-05-06T07:08:09Z") });
  const later = await writeWorkbook(tables, about);
  vi.useRealTimers();
  expect(Buffer.from(later).equals(Buffer.from(workbook))).toBe(true);
});

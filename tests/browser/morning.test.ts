import { mkdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchChromium } from "./chromium.ts";
import { pointOf, selection } from "./diagram.ts";
import { makeMachines, type Program, rowsOf } from "./programs.ts";

const root = resolve(import.meta.dirname, "../..");
const lists = join(root, "tests", "fixtures", "exchange");
const pictures = join(root, ".build", "pictures");

let browser: Browser;
let machines: Awaited<ReturnType<typeof makeMachines>>;

beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  [browser, machines] = await Promise.all([launchChromium(), makeMachines()]);
});
afterAll(async () => {
  await browser.close();
  machines.remove();
});

/** What the morning is seen in: the smallest desk and a large one, by day and by night. */
const desks = [
  { colorScheme: "light", width: 1280, height: 800 },
  { colorScheme: "dark", width: 1280, height: 800 },
  { colorScheme: "light", width: 2560, height: 1440 },
  { colorScheme: "dark", width: 2560, height: 1440 },
] as const;

test.for(desks)("a designer's morning, $colorScheme at $width by $height", { timeout: 300_000 }, async (desk) => {
  const machine = machines.setUp(browser);
  const program = await machine.start();
  const page = await machine.openPage(program, {
    viewport: { width: desk.width, height: desk.height },
    colorScheme: desk.colorScheme,
    acceptDownloads: true,
  });
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  let pictureCount = 0;
  const look = async (name: string): Promise<void> => {
    pictureCount += 1;
    const file = `morning-${desk.colorScheme}-${desk.width}-${pictureCount}-${name}.png`;
    await page.screenshot({ path: join(pictures, file) });
  };

  await look("start");
  await startRoute(page, "Pemberton");
  await bringIn(page, "Poles", "cambridge-poles.geojson", ["Note", "TYPE"], look);
  await expect.poll(() => countOf(program, "pole")).toBe(304);
  expect(await countOf(program, "span")).toBeGreaterThan(250);
  await bringIn(page, "Living units", "cambridge-addresses.geojson", ["Note", "Entry"], look);
  await expect.poll(() => countOf(program, "livingUnit")).toBe(42);
  expect((await rowsOf(program, "livingUnit")).every((unit) => unit.note === "Primary")).toBe(true);
  await page.keyboard.press("Escape");

  await page.getByRole("button", { name: "Lay out terminals" }).click();
  await expect.poll(() => countOf(program, "terminal"), { timeout: 90_000 }).toBeGreaterThan(3);
  await page.getByRole("button", { name: /^Undo lay out/ }).waitFor();
  await look("laid-out");

  const hungId = await hangByHand(program, page);
  await look("hung");
  const hungM = await drag(program, page, hungId);
  await page.keyboard.press("Control+z");
  await page.getByRole("button", { name: /^Redo move terminal/ }).waitFor();
  expect(await offsetOf(program, hungId)).toBe(hungM);
  await mendByFix(program, page, hungId);
  await look("mended");
  await waiveOne(program, page);
  await look("waived");
  await printSet(page);
  await look("sheets");

  expect(complaints).toEqual([]);
  await machine.close();
});

async function countOf(program: Program, table: "pole" | "span" | "livingUnit" | "terminal"): Promise<number> {
  return (await rowsOf(program, table)).length;
}

async function startRoute(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name: "Start a new route" }).click();
  const form = page.getByRole("form", { name: "Start a new route" });
  await form.getByLabel("Route name").fill(name);
  await form.getByRole("button", { name: "jobs/" }).click();
  await form.getByRole("button", { name: "Make it and bring in poles" }).click();
  await page.getByRole("complementary", { name: "Import" }).waitFor();
}

/** Takes a list in, with one column matched by hand. */
async function bringIn(
  page: Page,
  kind: string,
  fileName: string,
  [field, heading]: readonly [string, string],
  look: (name: string) => Promise<void>,
): Promise<void> {
  const panel = page.getByRole("complementary", { name: "Import" });
  await panel.getByLabel("What the file lists").selectOption({ label: kind });
  const buffer = readFileSync(join(lists, fileName));
  await panel.locator("input[type=file]").setInputFiles({ name: fileName, mimeType: "application/geo+json", buffer });
  await panel.getByRole("table", { name: "First rows" }).waitFor();
  await panel.getByLabel(new RegExp(`^${field}`)).selectOption(heading);
  const take = panel.getByRole("button", { name: /^Take \d+ rows in$/ });
  await expect.poll(() => take.getAttribute("aria-disabled"), { timeout: 60_000 }).toBe("false");
  await look(`import-${kind.toLowerCase().replace(" ", "-")}`);
  await take.click();
  await panel.getByText("It is shown here as it will be read").waitFor();
}

/** Hangs one more terminal on a cable span without one, by key and pointer. */
async function hangByHand(program: Program, page: Page): Promise<string> {
  const before = new Set((await rowsOf(program, "terminal")).map(({ id }) => id));
  const taken = new Set((await rowsOf(program, "terminal")).map(({ spanId }) => spanId));
  const strung = new Set((await rowsOf(program, "cableRun")).map(({ spanId }) => spanId));
  const span = (await rowsOf(program, "span"))
    .filter(({ id }) => strung.has(id) && !taken.has(id))
    .sort((a, b) => b.lengthM - a.lengthM)[0];
  if (!span) throw new Error("every cable span carries a terminal");
  await page.locator("[data-diagram]").focus();
  await zoomOn(page, span.id, 8);
  await page.keyboard.press("t");
  await page.getByRole("region", { name: /terminal/i }).waitFor();
  const [from, to] = [await pointOf(page, span.fromPoleId), await pointOf(page, span.toPoleId)];
  await page.mouse.click(from.x + (to.x - from.x) * 0.25, from.y + (to.y - from.y) * 0.25);
  const added = async () => (await rowsOf(program, "terminal")).find(({ id }) => !before.has(id));
  await expect.poll(async () => (await added())?.spanId).toBe(span.id);
  await page.keyboard.press("Escape");
  const hung = await added();
  if (!hung) throw new Error("the terminal is gone again");
  await expect.poll(() => selection(page)).toEqual([hung.id]);
  return hung.id;
}

async function zoomOn(page: Page, id: string, turnCount: number): Promise<void> {
  for (let turn = 0; turn < turnCount; turn += 1) {
    const { x, y } = await pointOf(page, id);
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, -200);
    await expect.poll(async () => Math.abs((await pointOf(page, id)).x - x)).toBeLessThan(2);
  }
}

/** Carries the terminal along its span; answers where it hung before. */
async function drag(program: Program, page: Page, id: string): Promise<number> {
  const terminal = (await rowsOf(program, "terminal")).find((one) => one.id === id);
  const span = (await rowsOf(program, "span")).find((one) => one.id === terminal?.spanId);
  if (!terminal || !span) throw new Error("the terminal hangs nowhere");
  const hangs = await pointOf(page, id);
  const [from, to] = [await pointOf(page, span.fromPoleId), await pointOf(page, span.toPoleId)];
  await page.mouse.move(hangs.x, hangs.y);
  await page.mouse.down();
  await page.mouse.move(hangs.x + (to.x - from.x) * 0.3, hangs.y + (to.y - from.y) * 0.3, { steps: 8 });
  await page.locator(".hand-chip").waitFor();
  await page.mouse.up();
  await expect.poll(() => offsetOf(program, id)).not.toBe(terminal.offsetM);
  await page.getByRole("button", { name: `Undo move terminal ${terminal.name}` }).waitFor();
  return terminal.offsetM;
}

async function offsetOf(program: Program, id: string): Promise<number | undefined> {
  return (await rowsOf(program, "terminal")).find((one) => one.id === id)?.offsetM;
}

/** Drags the terminal off its standard distance; the finding that follows offers the way back, and goes. */
async function mendByFix(program: Program, page: Page, id: string): Promise<void> {
  const hungM = await drag(program, page, id);
  const panel = page.getByRole("region", { name: "Findings" });
  await panel.getByLabel("Filter by text").fill("standard distance");
  const finding = panel.locator("li.finding");
  await finding.locator(".finding-fixes button").first().click();
  await expect.poll(() => offsetOf(program, id)).toBeCloseTo(hungM, 6);
  await finding.waitFor({ state: "detached" });
  await panel.getByLabel("Filter by text").fill("");
}

async function waiveOne(program: Program, page: Page): Promise<void> {
  const row = page.getByRole("region", { name: "Findings" }).locator("li.finding").first();
  await row.getByRole("button", { name: "Waive", exact: true }).click();
  await row.getByLabel("Reason").fill("the owner moves this pole in spring");
  await row.getByLabel("Name").fill("R. Hale");
  await row.getByLabel("Name").press("Enter");
  await expect.poll(async () => (await rowsOf(program, "waiver")).map(({ by }) => by)).toEqual(["R. Hale"]);
}

/** Looks at the sheets and has the set drawn to a PDF. */
async function printSet(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Preview sheets" }).click();
  await page.getByRole("region", { name: "Sheets" }).waitFor();
  const download = page.waitForEvent("download", { timeout: 90_000 });
  await page.getByRole("button", { name: "Draw the set" }).click();
  const path = await (await download).path();
  expect(readFileSync(path).subarray(0, 5).toString()).toBe("%PDF-");
}

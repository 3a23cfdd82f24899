import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { launchChromium } from "../chromium.ts";
import { groundUnder, pointOf, selection } from "../diagram.ts";
import { type Demo, makeDemo, type OpenWindow } from "../openWindow.ts";

let browser: Browser;
let demo: Demo;
let opened: OpenWindow;

beforeAll(async () => {
  [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
});
afterAll(async () => {
  await browser.close();
  demo.remove();
});
beforeEach(async () => {
  opened = await demo.open(browser);
});
afterEach(async () => {
  await opened.close();
});

type Spot = { readonly x: number; readonly y: number };

/** Takes a tool in hand by its key and waits until it says what to click. */
async function take(page: Page, key: string, name: string): Promise<void> {
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press(key);
  await page.getByRole("region", { name }).waitFor();
}

async function hint(page: Page): Promise<string> {
  return (await page.locator(".adding-strip output").textContent()) ?? "";
}

async function zoomOn(page: Page, id: string, turnCount: number): Promise<void> {
  for (let turn = 0; turn < turnCount; turn += 1) {
    const { x, y } = await pointOf(page, id);
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, -200);
    await page.waitForTimeout(40);
  }
}

/** The last pole of the main line and its one span. */
function lineEnd() {
  const { plant } = opened.session;
  const [cable] = [...opened.session.route().cable.values()].filter((one) => one.fromClosureId === null);
  const runs = plant.where("cableRun", "cableId", cable?.id ?? "").map((id) => plant.rowOf("cableRun", id));
  const last = runs.sort((a, b) => b.sequence - a.sequence)[0];
  if (!last) throw new Error("the demo route has no cable");
  const span = plant.rowOf("span", last.spanId);
  return { span, poleId: last.reversed ? span.fromPoleId : span.toPoleId };
}

function between(a: Spot, b: Spot, part: number): Spot {
  return { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part };
}

/** Screen ends of a long span with nothing hung in its middle. */
async function freeSpan() {
  const { plant } = opened.session;
  const tables = ["terminal", "slack", "closure", "crossing"] as const;
  const span = [...opened.session.route().span.values()].find(
    (one) => one.lengthM > 30 && tables.every((table) => plant.where(table, "spanId", one.id).length === 0),
  );
  if (!span) throw new Error("the demo route has no free span");
  await zoomOn(opened.page, span.id, 5);
  return { span, from: await pointOf(opened.page, span.fromPoleId), to: await pointOf(opened.page, span.toPoleId) };
}

/** One Ctrl+Z takes the whole edit back, once the window has heard of it. */
async function undoesInOneStep(before: object, step: RegExp): Promise<void> {
  await opened.page.getByRole("button", { name: step }).waitFor();
  await opened.page.keyboard.press("Control+z");
  await soon(rowsOf).toEqual(before);
}

/** What comes true once the host has answered; a small machine may take a while. */
function soon<T>(ask: () => T | Promise<T>) {
  return expect.poll(ask, { timeout: 20_000 });
}

function rowsOf(): object {
  const { pole, span, attachment, crossing, livingUnit, terminal, slack, cableRun } = opened.session.route();
  const sorted = (rows: ReadonlyMap<string, object>) =>
    Object.fromEntries([...rows].sort(([a], [b]) => (a < b ? -1 : 1)));
  return [pole, span, attachment, crossing, livingUnit, terminal, slack, cableRun].map(sorted);
}

test("a pole is set where one clicks on the ground, and one undo takes it back", async () => {
  const { page, session } = opened;
  const before = rowsOf();
  await take(page, "p", "Add a pole");
  expect(await hint(page)).toMatch(/^Click the ground/);
  const ground = await groundUnder(page, 300, 560);
  await page.mouse.click(300, 560);
  await soon(() => session.route().pole.size).toBe(51);
  const [id = ""] = await selection(page);
  const pole = session.plant.rowOf("pole", id);
  expect(Math.hypot(pole.eastM - ground.eastM, pole.northM - ground.northM)).toBeLessThan(0.01);
  await undoesInOneStep(before, /^Undo add pole/);
});

test("a pole clicked onto a span splits it there; joining its spans again takes the pole out", async () => {
  const { page, session } = opened;
  const { span, from, to } = await freeSpan();
  const before = rowsOf();
  const spot = between(from, to, 0.4);
  await take(page, "p", "Add a pole");
  await page.mouse.click(spot.x, spot.y);
  await soon(() => session.route().pole.size).toBe(51);
  expect(session.plant.rowOf("span", span.id).lengthM / span.lengthM).toBeCloseTo(0.4, 1);
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: /^Undo split span/ }).waitFor();
  await page.keyboard.press("j");
  await soon(() => session.route().pole.size).toBe(50);
  expect(session.plant.rowOf("span", span.id).lengthM).toBeCloseTo(span.lengthM, 6);
  await page.getByRole("button", { name: /^Undo remove pole/ }).waitFor();
  await page.keyboard.press("Control+z");
  await soon(() => session.route().pole.size).toBe(51);
  await undoesInOneStep(before, /^Undo split span/);
});

test("a click after the last pole extends the line with a span that carries strand and cable", async () => {
  const { page, session } = opened;
  const { poleId } = lineEnd();
  const before = rowsOf();
  await take(page, "p", "Add a pole");
  const end = await pointOf(page, poleId);
  await page.mouse.click(end.x, end.y);
  expect(await hint(page)).toBe("Click where the next pole stands.");
  await page.mouse.click(end.x - 12, end.y + 70);
  await soon(() => session.route().span.size).toBe(50);
  const spans = session.plant.where("span", "fromPoleId", poleId).map((id) => session.plant.rowOf("span", id));
  const grown = spans.find((one) => one.origin === "drawn");
  expect(grown?.strandSectionId).not.toBeNull();
  expect(session.plant.where("cableRun", "spanId", grown?.id ?? "")).toHaveLength(1);
  await undoesInOneStep(before, /^Undo extend the line/);
});

test("a lateral starts at the pole clicked and goes on from pole to pole until Escape", async () => {
  const { page, session } = opened;
  const [pole] = [...session.route().pole.values()].filter((one) => one.order === 7);
  if (!pole) throw new Error("the demo route has no seventh pole");
  await take(page, "l", "Start a lateral");
  const start = await pointOf(page, pole.id);
  await page.mouse.click(start.x, start.y);
  await page.mouse.click(start.x + 6, start.y + 46);
  await soon(() => session.route().pole.size).toBe(51);
  await page.mouse.click(start.x + 12, start.y + 88);
  await soon(() => session.route().pole.size).toBe(52);
  const added = [...session.route().pole.values()].slice(-2);
  expect(added.map((one) => one.line)).toEqual(["Lateral 1", "Lateral 1"]);
  await page.keyboard.press("Escape");
  expect(await hint(page)).toBe("Click the pole where the lateral leaves the line.");
  await page.keyboard.press("Escape");
  await page.locator(".adding-strip").waitFor({ state: "detached" });
});

test("a span is added between two poles clicked, and not twice", async () => {
  const { page, session } = opened;
  const before = rowsOf();
  const { poleId } = lineEnd();
  const [other = ""] = session.route().pole.keys();
  await take(page, "s", "Add a span");
  for (const id of [poleId, other]) {
    const { x, y } = await pointOf(page, id);
    await page.mouse.click(x, y);
  }
  await soon(() => session.route().span.size).toBe(50);
  const back = await pointOf(page, poleId);
  await page.mouse.click(back.x, back.y);
  await soon(() => page.locator(".said").textContent()).toContain("There is a span between these two poles");
  await undoesInOneStep(before, /^Undo add span/);
});

test("a crossing is drawn as wide as one drags and of the surface chosen", async () => {
  const { page, session } = opened;
  const { span, from, to } = await freeSpan();
  const before = rowsOf();
  await take(page, "c", "Add a crossing");
  const [a, b] = [between(from, to, 0.4), between(from, to, 0.6)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y, { steps: 6 });
  await page.mouse.up();
  await page.getByLabel("Surface").selectOption("driveway");
  await page.getByLabel("Name").fill("Mill drive");
  await page.keyboard.press("Enter");
  await soon(() => session.plant.where("crossing", "spanId", span.id).length).toBe(1);
  const [id = ""] = session.plant.where("crossing", "spanId", span.id);
  const crossing = session.plant.rowOf("crossing", id);
  expect(crossing).toMatchObject({ surface: "driveway", name: "Mill drive" });
  expect(crossing.widthM / span.lengthM).toBeCloseTo(0.2, 1);
  expect(crossing.offsetM / span.lengthM).toBeCloseTo(0.5, 1);
  await undoesInOneStep(before, /^Undo add crossing/);
});

test("an attachment is added at the pole clicked; a height that is none is refused beside its field", async () => {
  const { page, session } = opened;
  const before = rowsOf();
  const [poleId = ""] = session.route().pole.keys();
  await take(page, "a", "Add an attachment");
  const { x, y } = await pointOf(page, poleId);
  await page.mouse.click(x, y);
  await page.getByLabel("Owner").fill("Quern Cable");
  await page.getByLabel("Height").fill("tall");
  await page.keyboard.press("Enter");
  expect(await page.getByLabel("Height").getAttribute("aria-invalid")).toBe("true");
  await page.getByLabel("Height").fill("19' 6\"");
  await page.keyboard.press("Enter");
  const owned = () => [...session.route().attachment.values()].filter((one) => one.owner === "Quern Cable");
  await soon(() => owned().length).toBe(1);
  expect(owned()[0]).toMatchObject({ poleId, kind: "communication", heightM: 5.9436 });
  await undoesInOneStep(before, /^Undo add attachment/);
});

test("a living unit stands where one clicks, with the address typed", async () => {
  const { page, session } = opened;
  const before = rowsOf();
  await take(page, "u", "Add a living unit");
  const ground = await groundUnder(page, 320, 540);
  await page.mouse.click(320, 540);
  await page.getByLabel("Address").fill("1 Quern Lane");
  await page.keyboard.press("Enter");
  const added = () => [...session.route().livingUnit.values()].find((one) => one.address === "1 Quern Lane");
  await soon(() => added() !== undefined).toBe(true);
  expect(added()?.eastM).toBeCloseTo(ground.eastM, 2);
  await undoesInOneStep(before, /^Undo add living unit/);
});

test("a terminal is hung at the standard distance from the pole one clicks near", async () => {
  const { page, session } = opened;
  const { span, from, to } = await freeSpan();
  const before = rowsOf();
  await take(page, "t", "Hang a terminal");
  const spot = between(from, to, 0.25);
  await page.mouse.click(spot.x, spot.y);
  await soon(() => session.route().terminal.size).toBe(25);
  const [id = ""] = await selection(page);
  const terminal = session.plant.rowOf("terminal", id);
  if (terminal.reason === "") expect(terminal).toMatchObject({ spanId: span.id, offsetM: 0.9144 });
  await undoesInOneStep(before, /^Undo hang terminal/);
});

test("Escape takes one step back at a time and leaves the route as it was", async () => {
  const { page, session } = opened;
  const before = session.route();
  await take(page, "u", "Add a living unit");
  await page.mouse.click(320, 540);
  await page.getByLabel("Address").waitFor();
  await page.keyboard.press("Escape");
  await page.getByLabel("Address").waitFor({ state: "detached" });
  await page.keyboard.press("Escape");
  await page.locator(".adding-strip").waitFor({ state: "detached" });
  expect(session.route()).toBe(before);
});

test("the rail is one tab stop with arrows inside, each tool named with its key", async () => {
  const { page } = opened;
  const rail = page.getByRole("toolbar", { name: "Add by hand" });
  const names = await rail.getByRole("button").evaluateAll((all) => all.map((one) => one.getAttribute("aria-label")));
  expect(names).toHaveLength(7);
  await rail.getByRole("button", { name: "Add a pole" }).focus();
  expect(await page.getByRole("tooltip").textContent()).toContain("P");
  await page.keyboard.press("ArrowDown");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("Add a span");
  await page.keyboard.press("Enter");
  expect(await hint(page)).toBe("Click the pole where the span begins.");
});

test("a click on the page beside the ground is refused in words while the route is straightened", async () => {
  const { page, session } = opened;
  const before = session.route();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("r");
  await take(page, "u", "Add a living unit");
  await page.mouse.click(320, 540);
  await soon(() => page.locator(".said").textContent()).toContain("draw the route true to the ground first");
  expect(session.route()).toBe(before);
});

test("an empty route says what to do and a line can be drawn by hand from nothing", async () => {
  const empty = await demo.openEmpty(browser);
  try {
    const { page, session } = empty;
    const words = page.locator(".stage .empty");
    expect(await words.textContent()).toMatch(/Nothing is on this route yet/);
    await words.getByRole("button", { name: "Add a pole" }).click();
    await page.mouse.click(300, 400);
    await soon(() => session.route().pole.size).toBe(1);
    const [first = ""] = session.route().pole.keys();
    const { x, y } = await pointOf(page, first);
    await page.mouse.click(x, y);
    await page.mouse.click(x + 90, y);
    await soon(() => session.route().span.size).toBe(1);
    expect(empty.complaints).toEqual([]);
  } finally {
    await empty.close();
  }
});

import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { exportWords } from "../../renderer/app/actions/words.ts";
import { actions } from "../../renderer/app/actions.ts";
import { launchChromium } from "./chromium.ts";
import { groundUnder, pointOf, scale, selection, visibleIds } from "./diagram.ts";
import { type Demo, makeDemo, type OpenWindow } from "./openWindow.ts";

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

async function zoomOn(page: Page, id: string, turnCount: number): Promise<void> {
  for (let turn = 0; turn < turnCount; turn += 1) {
    const { x, y } = await pointOf(page, id);
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, -200);
    await page.waitForTimeout(40);
  }
}

test("the whole route is in view when the window opens", async () => {
  const { page, session } = opened;
  const shown = new Set(await visibleIds(page));
  const route = session.route();
  const missing = [...route.pole.keys(), ...route.terminal.keys(), ...route.livingUnit.keys()].filter(
    (id) => !shown.has(id),
  );
  expect(route.pole.size).toBeGreaterThan(40);
  expect(missing).toEqual([]);
});

test("the wheel zooms about the pointer: the ground under it stays", async () => {
  const { page } = opened;
  const world = () => groundUnder(page, 400, 300);
  await page.mouse.move(400, 300);
  const [before, scaleBefore] = [await world(), await scale(page)];
  await page.mouse.wheel(0, -240);
  await expect.poll(() => scale(page)).toBeGreaterThan(scaleBefore);
  const after = await world();
  expect(after.eastM).toBeCloseTo(before.eastM, 6);
  expect(after.northM).toBeCloseTo(before.northM, 6);
});

test("dragging empty ground moves it with the hand, and 0 shows the whole route again", async () => {
  const { page } = opened;
  const [id = ""] = opened.session.route().pole.keys();
  const before = await pointOf(page, id);
  await page.mouse.move(120, 120);
  await page.mouse.down();
  await page.mouse.move(200, 170, { steps: 4 });
  await page.mouse.up();
  const moved = await pointOf(page, id);
  expect([moved.x - before.x, moved.y - before.y].map(Math.round)).toEqual([80, 50]);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("0");
  expect(await pointOf(page, id)).toEqual(before);
});

test("a click on a terminal chooses it and tells its place, fibers and ports", async () => {
  const { page, session } = opened;
  const [terminal] = session.route().terminal.values();
  if (!terminal) throw new Error("the demo route has no terminal");
  await zoomOn(page, terminal.id, 5);
  const { x, y } = await pointOf(page, terminal.id);
  await page.mouse.click(x, y);
  expect(await selection(page)).toEqual([terminal.id]);
  const side = page.getByRole("complementary", { name: "What is chosen" });
  expect(await side.getByRole("heading", { level: 2 }).textContent()).toBe(`Terminal ${terminal.name}`);
  expect(await side.textContent()).toMatch(/36 in from pole \S+ toward \S+/);
  expect(await side.getByRole("img", { name: /^fiber \d+, [a-z ]+, [A-Z/]+$/ }).count()).toBeGreaterThan(0);
});

test("Shift adds to the choice, Shift and drag takes what the box encloses, Escape clears", async () => {
  const { page, session } = opened;
  const [first = "", second = ""] = session.route().pole.keys();
  await zoomOn(page, first, 4);
  const [a, b] = [await pointOf(page, first), await pointOf(page, second)];
  await page.mouse.click(a.x, a.y);
  await page.keyboard.down("Shift");
  await page.mouse.click(b.x, b.y);
  await page.keyboard.up("Shift");
  expect(await selection(page)).toEqual([first, second]);
  await page.keyboard.press("Escape");
  expect(await selection(page)).toEqual([]);
  await page.keyboard.down("Shift");
  await page.mouse.move(Math.min(a.x, b.x) - 15, Math.min(a.y, b.y) - 15);
  await page.mouse.down();
  await page.mouse.move(Math.max(a.x, b.x) + 15, Math.max(a.y, b.y) + 15, { steps: 5 });
  await page.mouse.up();
  await page.keyboard.up("Shift");
  expect(await selection(page)).toEqual(expect.arrayContaining([first, second]));
});

test("arrow keys walk from pole to pole and say where one stands", async () => {
  const { page } = opened;
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("ArrowRight");
  const [start] = await selection(page);
  await page.keyboard.press("ArrowRight");
  const [next] = await selection(page);
  expect(next).not.toBe(start);
  expect(await page.getByRole("status").textContent()).toMatch(/^(Pole|Terminal) \S/);
});

test("a finding in the list leads to its place", async () => {
  const { page, session } = opened;
  const finding = session.findings().find((one) => one.at !== null);
  if (!finding?.at) throw new Error("the demo route has no finding with a place");
  await page.locator(`[data-finding="${finding.key}"]`).first().click();
  expect(await selection(page)).toHaveLength(1);
  const centre = await page.locator("[data-diagram]").boundingBox();
  if (!centre) throw new Error("the diagram is not on the page");
  const at = await groundUnder(page, centre.x + centre.width / 2, centre.y + centre.height / 2);
  expect(Math.hypot(at.eastM - finding.at.eastM, at.northM - finding.at.northM)).toBeLessThan(1);
});

test("a fix mends its finding, undo brings it back, redo mends it again", async () => {
  const { page, session } = opened;
  const finding = session.findings().find((one) => one.fixes.length > 0);
  const fix = finding?.fixes[0];
  if (!finding || !fix) throw new Error("the demo route has no finding with a fix");
  const row = page.locator("li.finding", { has: page.locator(`[data-finding="${finding.key}"]`) });
  const isThere = (): boolean => session.findings().some((one) => one.key === finding.key);
  await row.getByRole("button", { name: fix.label, exact: true }).click();
  await row.waitFor({ state: "detached" });
  expect(isThere()).toBe(false);
  const undo = page.getByRole("button", { name: /^Undo ./ });
  await undo.waitFor();
  await page.keyboard.press("Control+z");
  await row.waitFor();
  expect(isThere()).toBe(true);
  await page.keyboard.press("Control+y");
  await row.waitFor({ state: "detached" });
  expect(isThere()).toBe(false);
  await page.keyboard.press("Control+z");
  await row.waitFor();
  await page.keyboard.press("Control+Shift+z");
  await row.waitFor({ state: "detached" });
  expect(isThere()).toBe(false);
});

test("Tab reaches every button of the bar and the diagram, and every button has a name", async () => {
  const { page } = opened;
  await page.locator("body").focus();
  const names = new Set<string>();
  for (let step = 0; step < 40; step += 1) {
    await page.keyboard.press("Tab");
    names.add(
      await page.evaluate(() => {
        const element = document.activeElement;
        return element?.getAttribute("aria-label") ?? element?.textContent ?? "";
      }),
    );
  }
  const barCount = actions.filter((one) => one.place !== null).length;
  const barNames = await page
    .locator(".bar button")
    .evaluateAll((buttons) => buttons.map((button) => button.getAttribute("aria-label") ?? button.textContent ?? ""));
  expect(barNames).toHaveLength(barCount);
  expect(barNames.filter((name) => name === "" || !names.has(name))).toEqual([]);
  expect([...names].some((name) => name.startsWith("Strand diagram"))).toBe(true);
});

test("a focused button tells its name, its key and why it cannot run", async () => {
  const { page } = opened;
  await page.getByRole("button", { name: "Redo" }).focus();
  const tip = page.getByRole("tooltip");
  await tip.waitFor();
  expect(await tip.textContent()).toContain("Nothing to redo.");
  expect(await tip.textContent()).toContain("Ctrl+Shift+Z");
});

test("the units switch changes what is read and can be undone", async () => {
  const { page, session } = opened;
  const side = page.getByRole("complementary", { name: "What is chosen" });
  expect(await side.textContent()).toMatch(/Strand[\d,]+ ft/);
  await page.getByRole("button", { name: "Switch to metric units" }).click();
  await page.getByRole("button", { name: "Switch to feet and inches" }).waitFor();
  expect(await side.textContent()).toMatch(/Strand[\d,.]+ m/);
  expect(session.plant.settings().unitSystem).toBe("metric");
  await page.keyboard.press("Control+z");
  await page.getByRole("button", { name: "Switch to metric units" }).waitFor();
  expect(session.plant.settings().unitSystem).toBe("us");
});

test("the sheets are shown as they will print, and the set is handed over as a PDF", async () => {
  const { page } = opened;
  await page.getByRole("button", { name: "Preview sheets" }).click();
  const paper = page.locator(".paper svg");
  await paper.waitFor();
  const sheetCount = await page.getByRole("navigation", { name: "Sheets" }).getByRole("button").count();
  expect(sheetCount).toBeGreaterThan(10);
  await page.keyboard.press("Escape");
  await page.locator("[data-diagram]").waitFor();
  const [download] = await Promise.all([
    page.waitForEvent("download", { timeout: 90_000 }),
    page.getByRole("button", { name: "Draw the set" }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/\.pdf$/);
});

test("the route is handed over for other programs, from the copies and from the finder alike", async () => {
  const { page } = opened;
  await page.getByRole("button", { name: "Show copies and backups" }).click();
  const others = page.getByRole("region", { name: "For other programs" });
  expect(await others.getByRole("button").allTextContents()).toEqual(Object.values(exportWords));
  for (const [ending, name] of Object.entries(exportWords)) {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      others.getByRole("button", { name, exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(new RegExp(`[.]${ending}$`));
    await page.getByText(`Exported as ${download.suggestedFilename()}.`).waitFor();
  }
  await page.getByRole("button", { name: "Put copies and backups away" }).click();
  await page.keyboard.press("Control+k");
  await page.keyboard.type("export as dxf");
  await page.getByRole("option", { name: /^Action Export as DXF/ }).waitFor();
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  expect(download.suggestedFilename()).toMatch(/[.]dxf$/);
});

test("long work shows how far it is and can be stopped; the route stays as it was", async () => {
  const { page, session } = opened;
  const rows = session.route();
  await page.getByRole("button", { name: "Draw the set" }).click();
  await page.getByRole("progressbar", { name: "Draw the set" }).waitFor();
  await page.getByRole("button", { name: "Cancel" }).click();
  await page.getByRole("progressbar").waitFor({ state: "detached" });
  expect(await page.getByRole("status").textContent()).toBe("Draw the set: stopped, nothing was changed.");
  expect(session.route()).toBe(rows);
});

test("the dark scheme inks the canvas on slate, the light one on paper", async () => {
  const { page } = opened;
  const corner = (): Promise<readonly number[]> =>
    page.evaluate(() => {
      const canvas = document.querySelector("canvas");
      return [...(canvas?.getContext("2d")?.getImageData(2, 2, 1, 1).data ?? [])];
    });
  await page.emulateMedia({ colorScheme: "light" });
  await expect.poll(corner).toEqual([0xfb, 0xfa, 0xf6, 255]);
  await page.emulateMedia({ colorScheme: "dark" });
  await expect.poll(corner).toEqual([0x15, 0x19, 0x1e, 255]);
});

test("the page asks for nothing beyond its own address and complains of nothing", async () => {
  const { page, requests, complaints } = opened;
  await page.getByRole("button", { name: "Preview sheets" }).click();
  await page.locator(".paper svg").waitFor();
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+i");
  await page.getByRole("complementary", { name: "Import" }).waitFor();
  const own = new URL(page.url()).origin;
  expect(requests.length).toBeGreaterThan(5);
  expect(requests.filter((address) => new URL(address).origin !== own)).toEqual([]);
  expect(complaints).toEqual([]);
});

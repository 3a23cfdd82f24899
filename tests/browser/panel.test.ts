import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { launchChromium } from "./chromium.ts";
import { selection } from "./diagram.ts";
import { type Demo, makeDemo, type OpenWindow } from "./openWindow.ts";
import { pressOn, sideOf } from "./panelHands.ts";

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

test("a height typed as the trade writes it is the same row value in every form, and nonsense leaves the former one", async () => {
  const { page, session } = opened;
  const [pole] = session.route().pole.values();
  if (!pole) throw new Error("the demo route has no pole");
  await pressOn(page, pole.id);
  const field = sideOf(page).getByLabel(/^Above ground/);
  const height = () => session.route().pole.get(pole.id)?.aboveGroundM;
  for (const [typed, valueM] of [
    ["36 ft", 10.9728],
    ["31' 6\"", 9.6012],
    ["480 in", 12.192],
    ["9.5 m", 9.5],
  ] as const) {
    await field.fill(typed);
    await field.press("Enter");
    await expect.poll(height).toBeCloseTo(valueM, 9);
  }
  await field.fill("rather tall");
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  const describedBy = await field.getAttribute("aria-describedby");
  const message = page.locator(`[id="${describedBy}"]`);
  expect(await message.textContent()).toMatch(/cannot be read/);
  await field.press("Enter");
  expect(await field.inputValue()).toBe("rather tall");
  expect(height()).toBeCloseTo(9.5, 9);
  await field.press("Escape");
  expect(await field.inputValue()).not.toBe("rather tall");
  expect(await selection(page)).toEqual([pole.id]);
  await field.fill("11 m");
  await field.press("Tab");
  await expect.poll(height).toBeCloseTo(11, 9);
  expect(await field.evaluate((element) => element === document.activeElement)).toBe(false);
});

test("several poles of the choice are changed together, and one undo takes it back", async () => {
  const { page, session } = opened;
  const [first = "", second = ""] = session.route().pole.keys();
  const owners = () => [first, second].map((id) => session.route().pole.get(id)?.owner);
  const before = owners();
  await pressOn(page, first);
  await pressOn(page, second, true);
  await sideOf(page).getByRole("heading", { name: "2 chosen" }).waitFor();
  expect(await sideOf(page).getByLabel("Tag", { exact: true }).count()).toBe(0);
  const field = sideOf(page).getByLabel("Owner");
  await field.fill("Valley Electric");
  await field.press("Enter");
  await expect.poll(owners).toEqual(["Valley Electric", "Valley Electric"]);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+z");
  await expect.poll(owners).toEqual(before);
});

test("the panel tells what a row touches and what was done to it", async () => {
  const { page, session } = opened;
  const [pole] = session.route().pole.values();
  if (!pole) throw new Error("the demo route has no pole");
  await pressOn(page, pole.id);
  const side = sideOf(page);
  const note = side.getByLabel("Note");
  await note.fill("look at the guy");
  await note.press("Enter");
  await expect.poll(() => session.route().pole.get(pole.id)?.note).toBe("look at the guy");
  await side.getByText("History", { exact: true }).click();
  await side.getByText(`Change pole ${pole.tag}`).waitFor();
  await side.getByText(/^Touches \(\d+\)$/).click();
  const link = side
    .locator("details")
    .getByRole("button", { name: /^Span / })
    .first();
  await link.click();
  await expect.poll(() => selection(page)).not.toEqual([pole.id]);
  const [spanId = ""] = await selection(page);
  expect(session.route().span.has(spanId)).toBe(true);
});

test("the history goes back to a step by name and forward again", async () => {
  const { page, session } = opened;
  const [pole] = session.route().pole.values();
  if (!pole) throw new Error("the demo route has no pole");
  await pressOn(page, pole.id);
  const note = sideOf(page).getByLabel("Note");
  for (const text of ["one", "two", "three"]) {
    await note.fill(text);
    await note.press("Enter");
    await expect.poll(() => session.route().pole.get(pole.id)?.note).toBe(text);
  }
  await page.getByRole("button", { name: "Show the history" }).click();
  const history = page.getByRole("complementary", { name: "History" });
  await history.getByRole("button", { name: "Undo to here, 2 steps" }).click();
  await expect.poll(() => session.route().pole.get(pole.id)?.note).toBe("one");
  await history.getByRole("button", { name: "Redo to here, 2 steps" }).click();
  await expect.poll(() => session.route().pole.get(pole.id)?.note).toBe("three");
});

import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launchChromium } from "./chromium.ts";
import { type Demo, makeDemo } from "./openWindow.ts";

let browser: Browser;
let demo: Demo;

beforeAll(async () => {
  [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
});
afterAll(async () => {
  await browser.close();
  demo.remove();
});

test("the colours follow the choice made here, on the canvas as on the panels, and paper stays white", async () => {
  const opened = await demo.open(browser, { colorScheme: "light" });
  const { page } = opened;
  const ground = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  const drawn = () =>
    page.evaluate(() => {
      const canvas = document.querySelector("canvas");
      return [...(canvas?.getContext("2d")?.getImageData(3, 3, 1, 1).data ?? [])].slice(0, 3).join(", ");
    });
  const light = await ground();
  expect(light).toBe(`rgb(${await drawn()})`);
  await page.getByRole("button", { name: "Change to light colours" }).click();
  await page.getByRole("button", { name: "Change to dark colours" }).click();
  await expect.poll(ground).not.toBe(light);
  await expect.poll(async () => `rgb(${await drawn()})`).toBe(await ground());
  await page.getByRole("button", { name: "Preview sheets" }).click();
  const paper = page.locator(".paper svg").first();
  await paper.waitFor();
  expect(await paper.evaluate((one) => getComputedStyle(one).backgroundColor)).toBe("rgb(255, 255, 255)");
  await opened.close();
});

test("in forced colours the diagram is drawn in the system's own", async () => {
  const opened = await demo.open(browser, { colorScheme: "dark", forcedColors: "active" });
  const { page } = opened;
  const system = await page.evaluate(() => {
    const probe = document.createElement("p");
    probe.style.color = "Canvas";
    document.body.append(probe);
    const { color } = getComputedStyle(probe);
    probe.remove();
    return color;
  });
  const drawn = await page.evaluate(() => {
    const pixel = document.querySelector("canvas")?.getContext("2d")?.getImageData(3, 3, 1, 1).data ?? [];
    return `rgb(${[...pixel].slice(0, 3).join(", ")})`;
  });
  expect(drawn).toBe(system);
  await opened.close();
});

test("at twice the size and with larger words no control is out of reach and nothing scrolls sideways", async () => {
  const opened = await demo.open(browser, { viewport: { width: 640, height: 400 } });
  const { page } = opened;
  const outside = () =>
    page.evaluate(() => {
      const wide = document.documentElement.scrollWidth > innerWidth ? ["page scrolls sideways"] : [];
      const out = [...document.querySelectorAll(".bar button")].flatMap((one) => {
        const { left, right, top, bottom } = one.getBoundingClientRect();
        return left < 0 || right > innerWidth || top < 0 || bottom > innerHeight
          ? [one.ariaLabel ?? one.textContent]
          : [];
      });
      return [...wide, ...out];
    });
  expect(await outside()).toEqual([]);
  await page.keyboard.press("Control+k");
  await page.keyboard.type("show words");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => document.documentElement.style.fontSize)).toBe("125%");
  expect(await outside()).toEqual([]);
  const stage = await page.locator(".stage").boundingBox();
  expect(stage?.height).toBeGreaterThan(80);
  expect(stage?.width).toBeGreaterThan(200);
  await opened.close();
});

test("a tooltip with name and key shows on focus", async () => {
  const opened = await demo.open(browser);
  const { page } = opened;
  await page.getByRole("button", { name: "Find anything" }).focus();
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Tab");
  const tip = page.locator(".tip").first();
  await tip.waitFor();
  expect(await tip.textContent()).toContain("Find anythingCtrl+K");
  await opened.close();
});

test("with no motion asked for, the whole route is shown within one frame", async () => {
  const opened = await demo.open(browser, { reducedMotion: "reduce" });
  const { page } = opened;
  await page.locator("[data-diagram]").focus();
  const before = await page.evaluate(() => window.__view?.scale());
  await page.keyboard.press("+");
  const [after, later] = await page.evaluate(async () => {
    const one = window.__view?.scale();
    await new Promise((done) => setTimeout(done, 200));
    return [one, window.__view?.scale()];
  });
  expect(after).not.toBe(before);
  expect(later).toBe(after);
  await opened.close();
});

test("an edit is told to the ear once", async () => {
  const opened = await demo.open(browser);
  const { page } = opened;
  await page
    .getByRole("button", { name: "Switch to metric units" })
    .or(page.getByRole("button", { name: "Switch to feet and inches" }))
    .click();
  const status = page.locator("output.said");
  await expect.poll(() => status.textContent()).not.toBe("");
  expect(await status.getAttribute("aria-live")).toBe("polite");
  await opened.close();
});

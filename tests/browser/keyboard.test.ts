import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchChromium } from "./chromium.ts";
import { type Demo, makeDemo, type OpenWindow } from "./openWindow.ts";
import { walkByTab } from "./tabWalk.ts";
import { views } from "./views.ts";

let browser: Browser;
let demo: Demo;

beforeAll(async () => {
  [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
});
afterAll(async () => {
  await browser.close();
  demo.remove();
});

/** One table and one catalogue stand for all; a menu is walked by arrows and closes by Tab. */
const walked = views.filter(
  ([name]) =>
    (!name.startsWith("the table:") || name.endsWith("Poles")) &&
    (!name.startsWith("the settings:") || /standards|Strand/.test(name)) &&
    name !== "the menu of a thing",
);

describe.each(["light", "dark"] as const)("in %s colours", (colorScheme) => {
  let shared: OpenWindow | null = null;
  afterAll(() => shared?.close());

  test.each(walked)("Tab meets every control of %s once, each with a ring that is seen", async (_name, go) => {
    const opened = shared ?? (await demo.open(browser, { colorScheme }));
    shared = opened;
    await opened.page.reload();
    await opened.page.locator("canvas").first().waitFor();
    await go(opened);
    const { met, again, missed, ringless } = await walkByTab(opened.page);
    expect(met.length).toBeGreaterThan(0);
    expect({ again, missed, ringless }).toEqual({ again: [], missed: [], ringless: [] });
  });
});

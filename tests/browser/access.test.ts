import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchChromium } from "./chromium.ts";
import { type Demo, makeDemo, type OpenWindow } from "./openWindow.ts";
import { views } from "./views.ts";
import { violations } from "./violations.ts";

let browser: Browser;
let demo: Demo;

beforeAll(async () => {
  [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
});
afterAll(async () => {
  await browser.close();
  demo.remove();
});

describe.each([
  ["light", { colorScheme: "light" }],
  ["dark", { colorScheme: "dark" }],
  ["forced high contrast", { colorScheme: "dark", forcedColors: "active" }],
] as const)("in %s colours", (_, colours) => {
  let shared: OpenWindow | null = null;
  afterAll(() => shared?.close());

  test.each(views)("%s has no serious hindrance for who cannot see or point", async (_name, go) => {
    const opened = shared ?? (await demo.open(browser, colours));
    shared = opened;
    await opened.page.reload();
    await opened.page.locator("canvas").first().waitFor();
    await go(opened);
    expect(await violations(opened.page)).toEqual([]);
  });
});

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launchChromium } from "./chromium.ts";
import { type Demo, makeDemo, type OpenWindow } from "./openWindow.ts";
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

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const run = (globalThis as unknown as { axe: { run: (options: object) => Promise<AxeResult> } }).axe.run; // put on the page just above
    // what passes is not asked for: it takes most of the time
    const { violations: found } = await run({ resultTypes: ["violations"], preload: false });
    return found
      .filter((one) => one.impact === "serious" || one.impact === "critical")
      .flatMap((one) => one.nodes.map((node) => `${one.id}: ${node.target.join(" ")}`));
  });
}

type AxeResult = {
  readonly violations: readonly {
    readonly id: string;
    readonly impact: string;
    readonly nodes: readonly { readonly target: readonly string[] }[];
  }[];
};

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

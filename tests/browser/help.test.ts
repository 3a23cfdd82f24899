import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { ruleRegister } from "../../core/rules/register.ts";
import { actions } from "../../renderer/app/actions.ts";
import { shownKey } from "../../renderer/app/keys.ts";
import { launchChromium } from "./chromium.ts";
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
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

const help = () => opened.page.getByRole("complementary", { name: "Help" });
const heading = () => help().getByRole("heading", { level: 2 }).textContent();

test("F1 opens the page about the panel that has the focus, and asks nothing of the network", async () => {
  const { page, requests } = opened;
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("F1");
  await expect.poll(heading).toBe("The strand diagram");
  await page.getByRole("region", { name: "Findings" }).getByRole("button").first().focus();
  await page.keyboard.press("F1");
  await expect.poll(heading).toBe("Findings");
  await page.keyboard.press("Control+i");
  await page.getByLabel("What the file lists").focus();
  await page.keyboard.press("F1");
  await expect.poll(heading).toBe("Bringing in lists");
  const own = new URL(page.url()).host;
  expect(requests.filter((one) => new URL(one).host !== own)).toEqual([]);
});

test("the search of the help leads to the word sought, and the rule book prints every rule", async () => {
  const { page } = opened;
  await page.keyboard.press("F1");
  await help().getByRole("searchbox").fill("ruling span");
  await help().getByRole("button", { name: "Words of the trade" }).click();
  await expect.poll(() => help().getByRole("term").allTextContents()).toContain("Ruling span");
  await help().getByRole("searchbox").fill("");
  await help().getByRole("button", { name: "Rule book" }).click();
  const titles = await help().getByRole("heading", { level: 3 }).allTextContents();
  expect([...titles].sort()).toEqual(ruleRegister.map((one) => one.title).sort());
});

test("? shows every action with its keys", async () => {
  const { page } = opened;
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("?");
  const sheet = page.getByRole("dialog", { name: "Keys" });
  for (const { id, keys } of actions) {
    const row = await sheet.locator(`[data-action="${id}"]`).textContent();
    for (const key of keys) expect(row).toContain(shownKey(key, false));
  }
});

test("a taken key is refused by the name of what has it; a free one works, is kept, and can be reset", async () => {
  const { page } = opened;
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("?");
  const row = page.locator('[data-action="findings"]');
  await row.getByRole("button").click();
  await page.keyboard.press("Control+b");
  expect(await row.getByRole("alert").textContent()).toContain("Put the side panel away");
  await page.keyboard.press("Control+Shift+L");
  await expect.poll(() => row.textContent()).toContain("Ctrl+Shift+L");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+Shift+L");
  const findings = page.getByRole("region", { name: "Findings" });
  await findings.waitFor({ state: "detached" });

  await page.reload();
  await page.locator("canvas").first().waitFor();
  expect(await findings.count()).toBe(0);
  await page.keyboard.press("Control+Shift+L");
  await findings.waitFor();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("?");
  await page.getByRole("button", { name: "Reset all keys" }).click();
  await expect.poll(() => row.textContent()).toContain("Ctrl+J");
});

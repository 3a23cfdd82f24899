import { expect, test } from "vitest";
import { ruleRegister } from "../../core/rules/register.ts";
import { actions } from "../../renderer/app/actions.ts";
import { shownKey } from "../../renderer/app/keys.ts";
import { gridKeyOf } from "../../renderer/tables/gridKeys.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

const help = () => opened().page.getByRole("complementary", { name: "Help" });
const heading = () => help().getByRole("heading", { level: 2 }).textContent();

test("F1 opens the page about the panel that has the focus, and asks nothing of the network", async () => {
  const { page, requests } = opened();
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
  const { page } = opened();
  await page.keyboard.press("F1");
  await help().getByRole("searchbox").fill("ruling span");
  await help().getByRole("button", { name: "Words of the trade" }).click();
  await expect.poll(() => help().getByRole("term").allTextContents()).toContain("Ruling span");
  await help().getByRole("searchbox").fill("");
  await help().getByRole("button", { name: "Rule book" }).click();
  const titles = await help().getByRole("heading", { level: 3 }).allTextContents();
  expect([...titles].sort()).toEqual(ruleRegister.map((one) => one.title).sort());
});

test("F1 in every panel, and in the boxes over the window, opens the page that is about it", async () => {
  const { page } = opened();
  const from = async (panel: string, title: string): Promise<void> => {
    await page.locator(panel).locator("button:visible, input:visible, [tabindex='0']:visible").first().focus();
    await page.keyboard.press("F1");
    await expect.poll(heading, { message: panel }).toBe(title);
  };
  const press = (name: string) => page.locator(".bar").getByRole("button", { name, exact: true }).click();
  await page.getByRole("button", { name: "Zoom in", exact: true }).focus();
  await page.keyboard.press("F1");
  await expect.poll(heading).toBe("The strand diagram");
  await from(".help", "Finding anything");
  await page.keyboard.press("Control+g");
  await from(".tables", "Tables");
  await page.keyboard.press("Control+g");
  await from(".side", "The side panel");
  await page.keyboard.press("Control+h");
  await page.locator(".history").waitFor();
  await from(".history", "The history");
  await page.keyboard.press("Control+l");
  await from(".layout", "Laying out");
  await page.keyboard.press("Control+l");
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("w");
  await from(".what-if", "What if");
  await page.keyboard.press("Escape");
  await page.locator(".what-if").waitFor({ state: "detached" });
  await page.keyboard.press("Control+u");
  await from(".balance", "The balance");
  await page.getByRole("tab", { name: "Light by terminal" }).click();
  await from(".light-route", "The light of the route");
  await page.keyboard.press("Control+u");
  await page.locator(".balance").waitFor({ state: "detached" });
  await press("Show copies and backups");
  await from(".copies", "Copies and backups");
  await press("Put copies and backups away");
  await press("Standards and catalogues");
  await from(".settings", "Standards and catalogues");
  await press("Put the standards away");
  await press("Preview sheets");
  await page.locator(".sheets").waitFor();
  await from(".sheets", "Sheets and printing");
  await press("Close the sheets");
  await press("Open or start a route");
  await from(".start", "Starting a route");
  await page.getByRole("button", { name: "Back to the route" }).click();
  await page.keyboard.press("Control+k");
  await page.getByRole("dialog").waitFor();
  await page.keyboard.press("F1");
  await expect.poll(heading).toBe("Finding anything");
  expect(await page.getByRole("dialog").count()).toBe(0);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("?");
  await page.getByRole("dialog", { name: "Keys" }).waitFor();
  await page.keyboard.press("F1");
  await expect.poll(heading).toBe("Keys");
});

test("the key sheet prints: every key on white paper, and nothing of the window around it", async () => {
  const { page } = opened();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("?");
  const sheet = page.getByRole("dialog", { name: "Keys" });
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute("data-printed", "yes");
  });
  await sheet.getByRole("button", { name: "Print the keys" }).click();
  expect(await page.locator("body").getAttribute("data-printed")).toBe("yes");
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  expect(await page.locator(".bar").isVisible()).toBe(false);
  expect(await page.locator("canvas").first().isVisible()).toBe(false);
  expect(await sheet.getByRole("button").first().isVisible()).toBe(false);
  const clipped = await sheet
    .locator("tr[data-action]")
    .evaluateAll((rows) => rows.filter((row) => row.getBoundingClientRect().height === 0).length);
  expect(clipped).toBe(0);
  expect(await sheet.evaluate((one) => getComputedStyle(one).backgroundColor)).toBe("rgb(255, 255, 255)");
  expect(await sheet.evaluate((one) => getComputedStyle(one.querySelector("td") ?? one).color)).toBe("rgb(0, 0, 0)");
});

test("? shows every action with its keys", async () => {
  const { page } = opened();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("?");
  const sheet = page.getByRole("dialog", { name: "Keys" });
  for (const { id, keys } of actions) {
    const row = await sheet.locator(`[data-action="${id}"]`).textContent();
    for (const key of keys) expect(row).toContain(shownKey(key, false));
    const tableKey = gridKeyOf(id);
    if (tableKey !== undefined) expect(row).toContain(shownKey(tableKey, false));
  }
});

test("a taken key is refused by the name of what has it; a free one works, is kept, and can be reset", async () => {
  const { page } = opened();
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

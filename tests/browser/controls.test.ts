import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { actions } from "../../renderer/app/actions.ts";
import { shownKey } from "../../renderer/app/keys.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened, openEmpty } = eachOnDemo();

const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();

/** Focuses every button that shows a sign alone and holds its tooltip against its name; answers with the names. */
async function signsTold(page: Page): Promise<readonly string[]> {
  const signs = page.locator("button:visible:not([tabindex='-1'])").filter({ hasNotText: /\S/ });
  const names: string[] = [];
  for (const sign of await signs.all()) {
    const name = (await sign.getAttribute("aria-label")) ?? "";
    expect(name).toMatch(/^[A-Z]/);
    // a tooltip shows on focus of the keyboard, not of the pointer
    await page.keyboard.press("Shift");
    await sign.focus();
    const tip = page.getByRole("tooltip");
    await expect
      .poll(async () => ((await tip.count()) === 0 ? "" : await tip.textContent()), { message: name })
      .toContain(name);
    names.push(name);
  }
  return names;
}

test("every button that shows a sign alone has a name, and a tooltip on focus with its key", async () => {
  const { page } = opened();
  const barNames = await signsTold(page);
  expect(barNames.length).toBeGreaterThan(12);
  const tips: string[] = [];
  for (const button of await page.locator(".bar button").all()) {
    await page.keyboard.press("Shift");
    await button.focus();
    const name = (await button.getAttribute("aria-label")) ?? (await button.textContent()) ?? "";
    const tip = page.getByRole("tooltip");
    await expect.poll(async () => ((await tip.count()) === 0 ? "" : await tip.textContent())).toContain(name);
    tips.push((await tip.textContent()) ?? "");
  }
  const inBar = actions.filter((one) => one.place !== null);
  expect(tips).toHaveLength(inBar.length);
  for (const { id, keys } of inBar) {
    const [key] = keys;
    const told = tips.filter((tip) => key !== undefined && tip.includes(shownKey(key, false)));
    if (key !== undefined) expect(told.length, id).toBeGreaterThan(0);
  }
});

test("signs of the tables, the kinds, an explanation and a message have names and tooltips too", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+g");
  await page.getByRole("grid").waitFor();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("k");
  await page.route("**/call/edit.run", (route) =>
    route.fulfill({ json: { ok: false, fault: { code: "x", what: "No.", where: "here", mend: "Wait." } } }),
  );
  await press(page, "Switch to metric units");
  await page.locator(".alert").waitFor();
  const names = await signsTold(page);
  expect(names).toEqual(expect.arrayContaining(["Choose columns", "Add a row", "Put the message away"]));
});

test("on an empty route every view says in a sentence why it is empty, and its button works", async () => {
  const empty = await openEmpty();
  const { page, complaints } = empty;
  const importing = page.getByRole("complementary", { name: "Import" });
  const says = async (view: string, sentence: RegExp): Promise<void> => {
    const empty = page.locator(`${view} .empty`).first();
    await empty.waitFor();
    expect(await empty.locator("p").textContent()).toMatch(sentence);
    expect(await empty.getByRole("button").first().isVisible()).toBe(true);
  };
  const importsFrom = async (view: string): Promise<void> => {
    await page.locator(`${view} .empty`).first().getByRole("button", { name: "Import" }).click();
    await importing.waitFor();
    await page.keyboard.press("Escape");
    await importing.waitFor({ state: "detached" });
  };
  await says(".stage", /^Nothing is on this route yet\./);
  await importsFrom(".stage");
  await says(".findings", /^Nothing is on this route yet, so there is nothing to check\.$/);
  await importsFrom(".findings");
  await says(".side", /^Nothing is on this route yet to tell about\./);
  await importsFrom(".side");
  await page.keyboard.press("Control+h");
  await says(".history", /^Nothing has been done to this route yet\.$/);
  await importsFrom(".history");
  await page.keyboard.press("Control+g");
  for (const tab of await page.getByRole("tab").all()) {
    await tab.click();
    await says(".tables", /^There are no rows of this kind yet\.$/);
  }
  await page.getByRole("tab", { name: "Poles", exact: true }).click();
  await page.locator(".tables .empty").getByRole("button", { name: "Add a row" }).click();
  await expect.poll(() => empty.session.route().pole.size).toBe(1);
  expect(complaints).toEqual([]);
  await empty.close();
});

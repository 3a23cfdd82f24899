import { join, resolve } from "node:path";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

/** Holds what a screen reader is given of a view against the kept one; `vitest run -u` keeps a new one, for review. */
async function asKept(view: Locator, name: string): Promise<void> {
  await view.waitFor();
  const kept = join(resolve(import.meta.dirname, "../fixtures/heard"), `${name}.yml`);
  // names of copies and times differ from run to run
  const heard = (await view.ariaSnapshot()).replace(/route-\d+\.strand/g, "route.strand");
  await expect(`${heard}\n`).toMatchFileSnapshot(kept);
}

async function chooseTerminal(page: Page): Promise<void> {
  const [terminal] = opened().session.route().terminal.values();
  await page.keyboard.press("Control+k");
  await page.keyboard.type(`Terminal ${terminal?.name}`);
  await page.keyboard.press("Enter");
  await page.getByRole("complementary", { name: "What is chosen" }).getByRole("heading", { level: 2 }).waitFor();
}

test("a screen reader is given the side panel of a terminal as it was kept", async () => {
  const { page } = opened();
  await chooseTerminal(page);
  await asKept(page.getByRole("complementary", { name: "What is chosen" }), "terminal");
});

test("a screen reader is given the findings as they were kept", async () => {
  const { page } = opened();
  const panel = page.getByRole("region", { name: "Findings" });
  await panel.getByLabel("Filter by text").fill("warning");
  await asKept(panel, "findings");
});

test("a screen reader is given the standards as they were kept", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+,");
  const room = page.getByRole("region", { name: "Standards and catalogues" });
  await room.getByText("company setting, 36 in from the pole's centre line").waitFor();
  await asKept(room, "standards");
});

test("a screen reader is given a table as it was kept", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+g");
  await page.getByRole("tab", { name: "Cables", exact: true }).click();
  await page.getByRole("grid", { name: "Cables" }).waitFor();
  await asKept(page.getByRole("region", { name: "Tables" }), "cables");
});

test("a screen reader is given a page of the help and the finder as they were kept", async () => {
  const { page } = opened();
  await page.keyboard.press("F1");
  await asKept(page.getByRole("complementary", { name: "Help" }), "help");
  await page.keyboard.press("Control+k");
  await page.keyboard.type("rule book");
  await asKept(page.getByRole("dialog", { name: "Find anything" }), "finder");
});

test("an edit, its undo, its redo and a refusal are each told once", async () => {
  const { page } = opened();
  await page.evaluate(() => {
    const told: string[] = [];
    Object.assign(window, { told });
    const live = "[aria-live], [role=alert], [role=status], output";
    new MutationObserver((changes) => {
      const regions = new Set(
        changes.flatMap(({ target }) => {
          const element = target instanceof Element ? target : target.parentElement;
          return element?.closest(live) ?? [];
        }),
      );
      for (const region of regions)
        if (region.getAttribute("aria-live") !== "off" && region.textContent) told.push(region.textContent);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  const told = () => page.evaluate(() => Reflect.get(window, "told").splice(0));
  const units = page.getByRole("button", { name: /^Switch to / });
  await units.click();
  await expect.poll(() => opened().session.plant.settings().unitSystem).toBe("metric");
  await page.getByRole("button", { name: "Switch to feet and inches" }).waitFor();
  expect(await told()).toEqual(["Change a setting"]);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+z");
  await page.getByRole("button", { name: "Switch to metric units" }).waitFor();
  expect(await told()).toEqual(["Undone: Change a setting"]);
  await page.keyboard.press("Control+y");
  await page.getByRole("button", { name: "Switch to feet and inches" }).waitFor();
  expect(await told()).toEqual(["Redone: Change a setting"]);
  await page.keyboard.press("Control+y");
  await page.getByText("Nothing to redo.").waitFor();
  expect(await told()).toEqual(["Nothing to redo."]);
});

import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo(
  async ({ page }) => {
    await page.locator("[data-diagram]").focus();
    await page.keyboard.press("d");
    await page.locator(".board-grid [data-row]").first().getByRole("rowheader").click();
    await page.locator("[data-entry]").waitFor();
  },
  { viewport: { width: 1000, height: 640 } },
);

/** What of the field under the hands and its name is covered or cut off: nothing, in words of which. */
function hiddenAtHand(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const field = document.activeElement;
    if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement)) return ["no field has the focus"];
    const parts = [field, ...(field.labels ?? [])];
    const isInSight = (part: Element): boolean => {
      const box = part.getBoundingClientRect();
      const corners = [box.top + 2, box.bottom - 2].map((y) => document.elementFromPoint(box.left + box.width / 2, y));
      return corners.every(
        (at) => at !== null && (part.contains(at) || at.contains(part)) && at.closest("[data-entry]"),
      );
    };
    return parts.filter((part) => !isInSight(part)).map((part) => `${part.tagName} ${part.textContent}`);
  });
}

test("in a low window with the findings open, the field under the hands and its name are in sight all down the form and up again", async () => {
  const { page } = opened();
  expect(await page.getByRole("region", { name: "Findings" }).isVisible()).toBe(true);
  const fields = page.locator("[data-entry] [data-reading]");
  await expect.poll(() => fields.first().evaluate((one) => one === document.activeElement)).toBe(true);
  const count = await fields.count();
  expect(count).toBeGreaterThan(5);
  for (const key of ["Tab", "Shift+Tab"])
    for (let step = 0; step < count; step += 1) {
      if (await page.evaluate(() => document.activeElement?.matches("[data-reading]") === true))
        expect(await hiddenAtHand(page), `${key} ${step}`).toEqual([]);
      await page.keyboard.press(key);
    }
});

test("three readings or more stand in sight at once in a low window", async () => {
  const { page } = opened();
  const count = await page.locator("[data-entry]").evaluate((form) => {
    const { top, bottom } = form.getBoundingClientRect();
    const head = form.querySelector(".entry-head")?.getBoundingClientRect().bottom ?? top;
    return [...form.querySelectorAll("[data-reading]")].filter((one) => {
      const box = one.getBoundingClientRect();
      return box.top >= head && box.bottom <= bottom;
    }).length;
  });
  expect(count).toBeGreaterThanOrEqual(3);
});

test("the findings fold down to their counts while the closeout is open in a low window, and a press unfolds them", async () => {
  const { page } = opened();
  const findings = page.getByRole("region", { name: "Findings" });
  const list = findings.getByRole("list", { name: "Findings in the order chosen" });
  expect(await list.count()).toBe(0);
  expect(await findings.getByText(/^\d+ errors?$/).isVisible()).toBe(true);
  await findings.getByRole("button", { name: "Unfold the findings" }).focus();
  await page.keyboard.press("Enter");
  await list.waitFor();
  expect(
    await findings.getByRole("button", { name: "Fold the findings" }).evaluate((one) => one === document.activeElement),
  ).toBe(true);
  await page.keyboard.press("Enter");
  await list.waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Put the closeout away" }).first().click();
  await list.waitFor();
  expect(await findings.getByRole("button", { name: /fold the findings$/i }).count()).toBe(0);
});

test("a window that is high enough keeps its findings beside the closeout", async () => {
  const { page } = opened();
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.getByRole("list", { name: "Findings in the order chosen" }).waitFor();
});

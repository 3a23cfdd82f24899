import type { Locator, Page } from "playwright-core";
import { pointOf } from "./diagram.ts";

/** The panel that tells and edits what is chosen. */
export function sideOf(page: Page): Locator {
  return page.getByRole("complementary", { name: "What is chosen" });
}

/** Zooms on a row and presses it, with Shift to add it to the choice. */
export async function pressOn(page: Page, id: string, isAdded = false): Promise<void> {
  if (!isAdded) {
    for (let turn = 0; turn < 5; turn += 1) {
      const { x, y } = await pointOf(page, id);
      await page.mouse.move(x, y);
      await page.mouse.wheel(0, -200);
      await page.waitForTimeout(40);
    }
  }
  const { x, y } = await pointOf(page, id);
  if (isAdded) await page.keyboard.down("Shift");
  await page.mouse.click(x, y);
  if (isAdded) await page.keyboard.up("Shift");
}

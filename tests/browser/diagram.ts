import type { Page } from "playwright-core";
import type { ViewHandle } from "../../renderer/app/viewHandle.ts";

type Ground = ReturnType<ViewHandle["toWorld"]>;

/** Scale of the diagram against 100 %. */
export function scale(page: Page): Promise<number> {
  return page.evaluate(() => window.__view?.scale() ?? 0);
}

/** Ids of the rows drawn inside the window. */
export function visibleIds(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => window.__view?.visibleIds() ?? []);
}

/** Ids of the chosen rows. */
export function selection(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => window.__view?.selection() ?? []);
}

/** Middle of a row's symbol in page pixels. */
export async function pointOf(page: Page, id: string): Promise<{ readonly x: number; readonly y: number }> {
  const point = await page.evaluate((wanted) => window.__view?.toScreen(wanted) ?? null, id);
  if (!point) throw new Error(`${id} is not drawn`);
  return point;
}

/** The ground under a pixel of the page. */
export async function groundUnder(page: Page, x: number, y: number): Promise<Ground> {
  const ground = await page.evaluate(([px, py]) => window.__view?.toWorld(px, py) ?? null, [x, y] as const);
  if (!ground) throw new Error("the diagram is not on the page");
  return ground;
}

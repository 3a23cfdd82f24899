import type { Page } from "playwright-core";
import { expect } from "vitest";
import type { Terminal } from "../../core/model/tables.ts";
import { pointOf, scale, selection } from "./diagram.ts";
import type { OpenWindow } from "./openWindow.ts";

/** A place on the page, px. */
type Spot = { readonly x: number; readonly y: number };

/** Turns the wheel over a row so many times, each once the diagram has followed. */
export async function zoomOn(page: Page, id: string, turnCount: number): Promise<void> {
  for (let turn = 0; turn < turnCount; turn += 1) {
    const { x, y } = await pointOf(page, id);
    const before = await scale(page);
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, -200);
    await expect.poll(() => scale(page), { interval: 10 }).toBeGreaterThan(before);
  }
}

/** Clicks a row and waits until it alone is chosen. */
export async function chooseOn(page: Page, id: string): Promise<void> {
  const { x, y } = await pointOf(page, id);
  await page.mouse.click(x, y);
  await expect.poll(() => selection(page)).toEqual([id]);
}

/** Clicks several rows, with Shift from the second on, and waits until they are chosen. */
export async function chooseTogether(page: Page, ids: readonly string[]): Promise<void> {
  for (const [i, id] of ids.entries()) {
    const { x, y } = await pointOf(page, id);
    if (i === 1) await page.keyboard.down("Shift");
    await page.mouse.click(x, y);
  }
  await page.keyboard.up("Shift");
  await expect.poll(() => selection(page)).toEqual(ids);
}

/** A point part of the way from one to another. */
export function between(a: Spot, b: Spot, partFrac: number): Spot {
  return { x: a.x + (b.x - a.x) * partFrac, y: a.y + (b.y - a.y) * partFrac };
}

/** A terminal as the host holds it. */
export function terminalOf({ session }: OpenWindow, id: string): Terminal {
  const row = session.route().terminal.get(id);
  if (!row) throw new Error(`terminal ${id} is gone`);
  return row;
}

/** A terminal that hangs at the standard distance from the first pole of a span with room, its neighbour none. */
export function lonelyTerminal({ session }: OpenWindow): string {
  const { plant } = session;
  for (const { id, spanId, offsetM } of session.route().terminal.values()) {
    const alone = plant.where("terminal", "spanId", spanId).length === 1;
    const { lengthM } = plant.rowOf("span", spanId);
    if (alone && lengthM > 35 && Math.abs(offsetM - plant.settings().standoffM) < 1e-6) return id;
  }
  throw new Error("the demo route has no terminal alone in its span");
}

/** Pixels on the page that a metre along a terminal's span takes, from its first pole on. */
export async function metreAlong(opened: OpenWindow, id: string): Promise<readonly [number, number]> {
  const { fromPoleId, toPoleId, lengthM } = opened.session.plant.rowOf("span", terminalOf(opened, id).spanId);
  const [from, to] = [await pointOf(opened.page, fromPoleId), await pointOf(opened.page, toPoleId)];
  return [(to.x - from.x) / lengthM, (to.y - from.y) / lengthM];
}

/** Takes hold of a terminal and carries it so many metres along its span; the button stays down. */
export async function carry(opened: OpenWindow, id: string, byM: number): Promise<void> {
  const { page } = opened;
  const [dx, dy] = await metreAlong(opened, id);
  const { x, y } = await pointOf(page, id);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + dx * byM, y + dy * byM, { steps: 6 });
}

/** The arrow key that leads along a terminal's span from its first pole on. */
export async function arrowAlong(opened: OpenWindow, id: string): Promise<string> {
  const [dx, dy] = await metreAlong(opened, id);
  if (Math.abs(dx) > Math.abs(dy)) return dx > 0 ? "ArrowRight" : "ArrowLeft";
  return dy > 0 ? "ArrowDown" : "ArrowUp";
}

import type { Page } from "playwright-core";
import { expect } from "vitest";
import { pointOf } from "./diagram.ts";
import { zoomOn } from "./diagramHands.ts";
import type { OpenWindow } from "./openWindow.ts";

/** Takes a tool in hand by its key and waits until it says what to click. */
export async function take(page: Page, key: string, name: string): Promise<void> {
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press(key);
  await page.getByRole("region", { name }).waitFor();
}

/** What the tool in hand says to click next. */
export async function hint(page: Page): Promise<string> {
  return (await page.locator(".adding-strip output").textContent()) ?? "";
}

/** The last pole of the main line and its one span. */
export function lineEnd({ session }: OpenWindow) {
  const { plant } = session;
  const [cable] = [...session.route().cable.values()].filter((one) => one.fromClosureId === null);
  const runs = plant.where("cableRun", "cableId", cable?.id ?? "").map((id) => plant.rowOf("cableRun", id));
  const last = runs.sort((a, b) => b.sequence - a.sequence)[0];
  if (!last) throw new Error("the demo route has no cable");
  const span = plant.rowOf("span", last.spanId);
  return { span, poleId: last.reversed ? span.fromPoleId : span.toPoleId };
}

/** A long span with nothing hung in its middle, and its ends on the page. */
export async function freeSpan({ page, session }: OpenWindow) {
  const { plant } = session;
  const tables = ["terminal", "slack", "closure", "crossing"] as const;
  const span = [...session.route().span.values()].find(
    (one) => one.lengthM > 30 && tables.every((table) => plant.where(table, "spanId", one.id).length === 0),
  );
  if (!span) throw new Error("the demo route has no free span");
  await zoomOn(page, span.id, 5);
  return { span, from: await pointOf(page, span.fromPoleId), to: await pointOf(page, span.toPoleId) };
}

/** One Ctrl+Z takes the whole edit back, once the window has heard of it. */
export async function undoesInOneStep(opened: OpenWindow, before: object, step: RegExp): Promise<void> {
  await opened.page.getByRole("button", { name: step }).waitFor();
  await opened.page.keyboard.press("Control+z");
  await expect.poll(() => rowsOf(opened)).toEqual(before);
}

/** What the diagram is drawn from, whatever the order of the rows. */
export function rowsOf({ session }: OpenWindow): object {
  const { pole, span, attachment, guy, crossing, structure, groundPoint, livingUnit, terminal, slack, cableRun } =
    session.route();
  const sorted = (rows: ReadonlyMap<string, object>) =>
    Object.fromEntries([...rows].sort(([a], [b]) => (a < b ? -1 : 1)));
  const onLine = [pole, span, attachment, guy, crossing, structure, groundPoint];
  return [...onLine, livingUnit, terminal, slack, cableRun].map(sorted);
}

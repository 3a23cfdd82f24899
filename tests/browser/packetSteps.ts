import { randomUUID } from "node:crypto";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { slowDown } from "./openWindow.ts";

/** The panel of the field packets. */
export const packetsOf = (page: Page) => page.getByRole("complementary", { name: "Field packets" });

/** Gives a crew a packet of every terminal by the keyboard; answers with where its page was saved. */
export async function givePacket(page: Page, crew: string, folder: string): Promise<string> {
  await packetsOf(page).getByRole("button", { name: "Give a crew a packet" }).press("Enter");
  const form = packetsOf(page).getByRole("form", { name: "Give a crew a packet" });
  await page.keyboard.type(crew);
  await form.getByLabel("By", { exact: true }).fill("M. Okafor");
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  // a crew may have a name no file can have
  const path = join(folder, `packet-${randomUUID()}.html`);
  await download.saveAs(path);
  await form.waitFor({ state: "detached" });
  return path;
}

/**
 * Opens a packet's page from its file as a crew would, on a phone's width.
 *
 * @param said  what the page complains of, and whatever it asks of a network
 */
export async function openPacket(beside: Page, path: string, said: string[]): Promise<Page> {
  const page = await beside.context().newPage();
  await slowDown(page);
  await page.setViewportSize({ width: 360, height: 740 });
  page.on("console", (one) => said.push(one.text()));
  page.on("pageerror", (one) => said.push(String(one)));
  page.on("request", (one) => {
    if (!/^(file|data|blob):/.test(one.url())) said.push(one.url());
  });
  await page.goto(pathToFileURL(path).href);
  await page.getByRole("heading", { level: 1 }).waitFor();
  return page;
}

/** Writes the file that goes back to the office. */
export async function writeBack(page: Page, name: string, folder: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "I am done: write the file" }).press("Enter"),
  ]);
  const path = join(folder, name);
  await download.saveAs(path);
  return path;
}

/** The first field of a packet for an offset. */
export const offsetOf = (page: Page) => page.getByLabel("From the pole's centre line").first();

import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { packetFile } from "../../core/closeout/packet/packetFile.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import { slowDown } from "./openWindow.ts";
import { violations } from "./violations.ts";

const { opened } = eachOnDemo();
let folder: string;
let givenCount = 0;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "strandwright-packets-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const panelOf = (page: Page) => page.getByRole("complementary", { name: "Field packets" });

/** Gives a crew a packet of every terminal by the keyboard; answers with where its page was saved. */
async function give(page: Page, crew: string): Promise<string> {
  await panelOf(page).getByRole("button", { name: "Give a crew a packet" }).press("Enter");
  const form = panelOf(page).getByRole("form", { name: "Give a crew a packet" });
  await page.keyboard.type(crew);
  await form.getByLabel("By", { exact: true }).fill("M. Okafor");
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  givenCount += 1;
  const path = join(folder, `packet-${givenCount}.html`);
  await download.saveAs(path);
  await form.waitFor({ state: "detached" });
  return path;
}

/** Opens a packet's page from its file as a crew would, on a phone's width. */
async function openPacket(path: string, said: string[]): Promise<Page> {
  const context = opened().page.context();
  const page = await context.newPage();
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
async function done(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "I am done: write the file" }).press("Enter"),
  ]);
  const path = join(folder, name);
  await download.saveAs(path);
  return path;
}

const offsetOf = (page: Page) => page.getByLabel("From the pole's centre line").first();
const standing = (page: Page) => page.locator('[data-stands="far"] .says');

test("a crew fills a packet from a file at a phone's width; what is typed is there after the page was closed", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+Shift+k");
  const path = await give(page, "North");
  const said: string[] = [];
  const packet = await openPacket(path, said);
  await packet.getByLabel("Your name").focus();
  await packet.keyboard.type("R. Diaz");
  await offsetOf(packet).focus();
  await packet.keyboard.type("3' 2\"");
  await packet.getByText("Read as 38 in.").waitFor();
  await packet.keyboard.press("Tab");
  await packet.keyboard.type("44 ft");
  await standing(packet)
    .getByText(/but drawn .* Is that what you measured\?/)
    .waitFor();
  await packet.keyboard.press("Tab");
  await packet.keyboard.type("12 x");
  await packet.getByText('"12 x" cannot be read as the figure printed on the sheath.').waitFor();
  await packet.getByRole("radio", { name: "Yes" }).first().check();
  await packet
    .locator('input[type="file"]')
    .first()
    .setInputFiles({
      name: "terminal.png",
      mimeType: "image/png",
      buffer: Buffer.from(
        "iVBORw0KGgoAAAANSUhEUgAAAAoAAAAKCAIAAAACUFjqAAAAEklEQVR4nGNQSGjAgxhGpbEhAGs6ZAGvESAPAAAAAElFTkSuQmCC",
        "base64",
      ),
    });
  await packet.locator(".photos li").waitFor();
  expect(await packet.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  expect(await violations(packet)).toEqual([]);
  await packet.close();
  const again = await openPacket(path, said);
  expect(await offsetOf(again).inputValue()).toBe("3' 2\"");
  await again.locator(".photos li").waitFor();
  const file = packetFile.parse(JSON.parse(readFileSync(await done(again, "north.json"), "utf8")));
  expect(file.readings.map((one) => [one.what, one.after.value, one.after.by])).toEqual([
    ["offset", 0.9652, "R. Diaz"],
    ["slack", 13.4112, "R. Diaz"],
    ["continuity", 1, "R. Diaz"],
  ]);
  expect([file.unread.length, file.photos.length, file.photos[0]?.widthPx]).toEqual([1, 1, 10]);
  expect(said).toEqual([]);
  await again.close();
});

test("where the browser refuses to keep anything the page says so, and what is typed still goes into the file", async () => {
  const { page } = opened();
  // a name that would be script where it is not kept as text
  const crew = "</script><img src=x onerror=console.log(1)>";
  await page.keyboard.press("Control+Shift+k");
  const path = await give(page, crew);
  await page.context().addInitScript(() => {
    for (const name of ["localStorage", "indexedDB"])
      Object.defineProperty(window, name, {
        get: () => {
          throw new DOMException("refused", "SecurityError");
        },
      });
  });
  const said: string[] = [];
  const packet = await openPacket(path, said);
  await packet.getByText(`For ${crew}.`).waitFor();
  await packet.getByText("This browser refuses to keep anything.").waitFor();
  await packet.getByText("Photos cannot be kept in this browser").waitFor();
  await packet.getByRole("button", { name: "I am done: write the file" }).press("Enter");
  await packet.getByText("Write your name first").waitFor();
  await packet.keyboard.type("E. Lund");
  await offsetOf(packet).fill("36 in");
  const file = packetFile.parse(JSON.parse(readFileSync(await done(packet, "east.json"), "utf8")));
  expect(file.readings.map((one) => [one.after.value, one.after.by])).toEqual([[0.9144, "E. Lund"]]);
  expect(said).toEqual([]);
  await packet.close({ runBeforeUnload: false });
});

test("what two crews read otherwise is shown side by side, decided by the keyboard, and taken back by undo", async () => {
  const { page, session } = opened();
  await page.keyboard.press("Control+Shift+k");
  const said: string[] = [];
  const files: string[] = [];
  for (const [crew, read] of [
    ["North", "36 in"],
    ["South", "40 in"],
  ] as const) {
    const packet = await openPacket(await give(page, crew), said);
    await packet.getByLabel("Your name").fill(`${crew} hand`);
    await offsetOf(packet).fill(read);
    files.push(await done(packet, `${crew}.json`));
    await packet.close();
  }
  await panelOf(page).getByLabel("Bring packets back").setInputFiles(files);
  await panelOf(page).getByText("1 taken", { exact: true }).waitFor();
  await panelOf(page).getByText("0 taken, 1 beside others").waitFor();
  const rival = panelOf(page).getByRole("listitem", { name: /^From the pole's centre line, / });
  expect(await rival.locator("strong").allTextContents()).toEqual(["36 in", "40 in"]);
  expect(await rival.textContent()).toMatch(/as drawn.*North hand.*4 in more.*South hand/);
  await rival.getByRole("button", { name: /^Take what South brought/ }).press("Enter");
  await rival.waitFor({ state: "detached" });
  expect([...session.route().reading.values()].map((one) => [one.value, one.by])).toEqual([[1.016, "South hand"]]);
  await page.keyboard.press("Control+z");
  await rival.waitFor();
  await panelOf(page).getByLabel("Bring packets back").setInputFiles(files);
  await panelOf(page).getByText("0 taken, 1 there already").first().waitFor();
  expect(session.route().rivalReading.size).toBe(1);
  expect(said).toEqual([]);
});

test("a packet that falls onto the window is taken in, one that is damaged is refused and nothing changes", async () => {
  const { page, session } = opened();
  const drop = (text: string) =>
    page.evaluate((content) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content], "crew.json"));
      document.querySelector("main")?.dispatchEvent(new DragEvent("drop", { dataTransfer: transfer, bubbles: true }));
    }, text);
  const before = session.route();
  await drop('{"format":"strandwright field packet","version":1,"readings":"<img src=x onerror=alert(1)>"}');
  await page.getByRole("alert").getByText("The field packet is damaged").waitFor();
  await panelOf(page).waitFor();
  expect(session.route()).toBe(before);
});

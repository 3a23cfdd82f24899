import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { packetFile } from "../../core/closeout/packet/packetFile.ts";
import { packetFormat, packetVersion } from "../../core/closeout/packet/packetFormat.ts";
import { subjectOf } from "../../core/closeout/subject.ts";
import { takePacket } from "../../electron/host/takePacket.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import { givePacket, offsetOf, openPacket, packetsOf, writeBack } from "./packetSteps.ts";
import { violations } from "./violations.ts";

const { opened } = eachOnDemo();
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "strandwright-packets-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const standing = (page: Page) => page.locator('[data-stands="far"] .says');

test("a crew fills a packet from a file at a phone's width; what is typed is there after the page was closed", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+Shift+k");
  const path = await givePacket(page, "North", folder);
  const said: string[] = [];
  const packet = await openPacket(page, path, said);
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
  const again = await openPacket(page, path, said);
  expect(await offsetOf(again).inputValue()).toBe("3' 2\"");
  await again.locator(".photos li").waitFor();
  const file = packetFile.parse(JSON.parse(readFileSync(await writeBack(again, "north.json", folder), "utf8")));
  expect(file.readings.map((one) => [one.what, one.after.value, one.after.by])).toEqual([
    ["offset", 0.9652, "R. Diaz"],
    ["slack", 13.4112, "R. Diaz"],
    ["continuity", 1, "R. Diaz"],
  ]);
  expect([file.unread.length, file.photos.length, file.photos[0]?.widthPx]).toEqual([1, 1, 10]);
  expect(said).toEqual([]);
  await again.close();
});

test("a photo taken with the phone on its side stands upright in what is written", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+Shift+k");
  const packet = await openPacket(page, await givePacket(page, "North", folder), []);
  await packet.getByLabel("Your name").fill("R. Diaz");
  // 40 points wide and 20 high as the camera lies: red on the left, blue on the right
  const plain = await packet.evaluate(() => {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [40, 20];
    const pen = canvas.getContext("2d");
    for (const [colour, x] of [
      ["#f00", 0],
      ["#00f", 20],
    ] as const) {
      if (pen) pen.fillStyle = colour;
      pen?.fillRect(x, 0, 20, 20);
    }
    return canvas.toDataURL("image/jpeg", 0.9).split(",")[1] ?? "";
  });
  const buffer = turnedBy(6, Buffer.from(plain, "base64"));
  await packet
    .locator('input[type="file"]')
    .first()
    .setInputFiles({ name: "side.jpg", mimeType: "image/jpeg", buffer });
  await packet.locator(".photos li").waitFor();
  const file = packetFile.parse(JSON.parse(readFileSync(await writeBack(packet, "side.json", folder), "utf8")));
  const [photo] = file.photos;
  expect([photo?.widthPx, photo?.heightPx]).toEqual([20, 40]);
  const colours = await packet.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([bytes], { type: "image/jpeg" }), { imageOrientation: "none" });
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [picture.width, picture.height];
    const pen = canvas.getContext("2d");
    pen?.drawImage(picture, 0, 0);
    const at = (y: number) => [...(pen?.getImageData(10, y, 1, 1).data ?? [])].map((one) => (one > 127 ? 1 : 0));
    return [picture.width, at(5), at(35)];
  }, photo?.base64 ?? "");
  // turned a quarter to the right, the left of the camera is at the top
  expect(colours).toEqual([20, [1, 0, 0, 1], [0, 0, 1, 1]]);
  await packet.close();
});

/**
 * A JPEG that says how the camera was held.
 *
 * @source Exif 2.3 (CIPA DC-008-2012), 4.5.2 APP1, 4.6.4 tag 0x0112 Orientation: 6 is shown turned a quarter clockwise
 */
function turnedBy(orientation: number, jpeg: Buffer): Buffer {
  const tiff = [0x4d, 0x4d, 0, 0x2a, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0];
  const content = [...Buffer.from("Exif\0\0", "latin1"), ...tiff];
  const segment = Buffer.from([0xff, 0xe1, 0, content.length + 2, ...content]);
  return Buffer.concat([jpeg.subarray(0, 2), segment, jpeg.subarray(2)]);
}

test("where the browser refuses to keep anything the page says so, and what is typed still goes into the file", async () => {
  const { page } = opened();
  // a name that would be script where it is not kept as text
  const crew = "</script><img src=x onerror=console.log(1)>";
  await page.keyboard.press("Control+Shift+k");
  const path = await givePacket(page, crew, folder);
  await page.context().addInitScript(() => {
    for (const name of ["localStorage", "indexedDB"])
      Object.defineProperty(window, name, {
        get: () => {
          throw new DOMException("refused", "SecurityError");
        },
      });
  });
  const said: string[] = [];
  const packet = await openPacket(page, path, said);
  await packet.getByText(`For ${crew}.`).waitFor();
  await packet.getByText("This browser refuses to keep anything.").waitFor();
  await packet.getByText("Photos cannot be kept in this browser").waitFor();
  await packet.getByRole("button", { name: "I am done: write the file" }).press("Enter");
  await packet.getByText("Write your name first").waitFor();
  await packet.keyboard.type("E. Lund");
  await offsetOf(packet).fill("36 in");
  const file = packetFile.parse(JSON.parse(readFileSync(await writeBack(packet, "east.json", folder), "utf8")));
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
    const packet = await openPacket(page, await givePacket(page, crew, folder), said);
    await packet.getByLabel("Your name").fill(`${crew} hand`);
    await offsetOf(packet).fill(read);
    files.push(await writeBack(packet, `${crew}.json`, folder));
    await packet.close();
  }
  await packetsOf(page).getByLabel("Bring packets back").setInputFiles(files);
  await packetsOf(page).getByText("1 taken", { exact: true }).waitFor();
  await packetsOf(page).getByText("0 taken, 1 beside others").waitFor();
  const rival = packetsOf(page).getByRole("listitem", { name: /^From the pole's centre line, / });
  expect(await rival.locator("strong").allTextContents()).toEqual(["36 in", "40 in"]);
  expect(await rival.textContent()).toMatch(/None stands.*as drawn.*North hand.*4 in more.*South hand/);
  expect(session.route().reading.size).toBe(0);
  await rival.getByRole("button", { name: /^Take what South brought/ }).press("Enter");
  await rival.waitFor({ state: "detached" });
  expect([...session.route().reading.values()].map((one) => [one.value, one.by])).toEqual([[1.016, "South hand"]]);
  await page.keyboard.press("Control+z");
  await rival.waitFor();
  await packetsOf(page).getByLabel("Bring packets back").setInputFiles(files);
  await packetsOf(page).getByText("0 taken, 1 there already").first().waitFor();
  expect([session.route().reading.size, session.route().rivalReading.size]).toEqual([0, 2]);
  expect(said).toEqual([]);
});

test("a reading in dispute is told where it is written down and on the board, and one press leads to the decision", async () => {
  const { page, session } = opened();
  const [terminal] = [...session.route().terminal.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
  if (!terminal) throw new Error("the demo route has no terminal");
  for (const [crew, value] of [
    ["North", 0.9144],
    ["South", 1.016],
  ] as const) {
    const signed = { by: `${crew} hand`, atIso: "2030-05-02T10:00:00Z" };
    const packetId = `packet-${crew}`;
    session.run("packet.give", { packetId, crew, terminalIds: [terminal.id], wavelengthsNm: [], ...signed });
    const about = { ...subjectOf("terminal", terminal.id), what: "offset", wavelengthNm: 0 } as const;
    const readings = [{ ...about, before: null, sent: [], after: { value, text: "", ...signed } }];
    const head = { format: packetFormat, version: packetVersion, packetId, routeName: "", crew };
    const taken = takePacket(session, "crew.json", JSON.stringify({ ...head, readings, unread: [], photos: [] }));
    if (!taken.ok) throw new Error(taken.fault.what);
  }
  await page.reload();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("d");
  const row = page.locator(`[data-row="${terminal.id}"]`);
  await row.getByText("from the pole disputed").waitFor();
  await row.getByRole("rowheader").click();
  const form = page.getByRole("region", { name: `Readings: ${terminal.name}` });
  await form.getByText("Readings disagree: 36 in (North hand), 40 in (South hand).").waitFor();
  await form.getByRole("button", { name: "Decide" }).click();
  await packetsOf(page)
    .getByRole("button", { name: /^Take what North brought/ })
    .click();
  await form.getByText("Readings disagree").waitFor({ state: "detached" });
  expect([...session.route().reading.values()].map((one) => [one.value, one.by])).toEqual([[0.9144, "North hand"]]);
});

test("a packet written again asks for light at the same wavelengths as the first time", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+Shift+k");
  await packetsOf(page).getByRole("button", { name: "Give a crew a packet" }).press("Enter");
  await page.keyboard.type("North");
  const form = packetsOf(page).getByRole("form", { name: "Give a crew a packet" });
  await form.getByLabel("By", { exact: true }).fill("M. Okafor");
  await form.getByLabel("Light also at, nm").fill("1310, 1550");
  const asked = async (press: Promise<void>): Promise<readonly string[]> => {
    const [download] = await Promise.all([page.waitForEvent("download"), press]);
    const path = join(folder, "again.html");
    await download.saveAs(path);
    return [...new Set(readFileSync(path, "utf8").match(/Port 1, \d+ nm/g))];
  };
  const first = await asked(page.keyboard.press("Enter"));
  expect(first).toEqual(expect.arrayContaining(["Port 1, 1310 nm", "Port 1, 1550 nm"]));
  await packetsOf(page).getByText("light also at 1310, 1550 nm").waitFor();
  expect(await asked(packetsOf(page).getByRole("button", { name: "Write it again, packet 1" }).click())).toEqual(first);
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
  await packetsOf(page).waitFor();
  expect(session.route()).toBe(before);
});

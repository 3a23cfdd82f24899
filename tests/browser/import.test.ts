import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { demoSeed, makeDemo as makeDemoLists } from "../../assets/demo/makeDemo.ts";
import { launchChromium } from "./chromium.ts";
import { visibleIds } from "./diagram.ts";
import { type Demo, makeDemo } from "./openWindow.ts";

let browser: Browser;
let demo: Demo;

beforeAll(async () => {
  [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
});
afterAll(async () => {
  await browser.close();
  demo.remove();
});

const poles = [
  "tag,latitude,longitude,height ft,order",
  "Q-1,41.2000,-95.9000,35,1",
  "Q-2,41.2004,-95.9000,tall,2",
  "Q-3,,-95.9000,40,3",
  "Q-4,41.2012,-95.9000,40,4",
].join("\n");

async function chooseFile(page: Page, name: string, text: string): Promise<void> {
  await page.locator("input[type=file]").setInputFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
  await page.getByRole("table", { name: "First rows" }).waitFor();
}

test("an empty route says what to do, and its button opens the import", async () => {
  const opened = await demo.openEmpty(browser);
  const { page } = opened;
  await page.getByText("Nothing is on this route yet.").waitFor();
  await page.locator(".stage").getByRole("button", { name: "Import" }).click();
  expect(await page.getByRole("complementary", { name: "Import" }).isVisible()).toBe(true);
  await opened.close();
});

test("bad rows are shown with line, column, value and what is accepted; the good ones can be taken and undone", async () => {
  const opened = await demo.openEmpty(browser);
  const { page, session, complaints } = opened;
  await page.keyboard.press("Control+i");
  await chooseFile(page, "poles.csv", poles);
  const bad = page.getByRole("table", { name: "Bad rows" });
  const rows = await bad.getByRole("row").allTextContents();
  expect(rows.some((text) => /^3.*height.*tall/.test(text))).toBe(true);
  expect(rows.some((text) => text.startsWith("4"))).toBe(true);
  const take = page.getByRole("button", { name: /^Take \d+ rows? in$/ });
  expect(await take.getAttribute("aria-disabled")).toBe("true");
  await take.click({ force: true });
  expect(session.route().pole.size).toBe(0);

  await page.getByLabel("Take the good rows when others are bad").check();
  await expect.poll(() => take.getAttribute("aria-disabled")).toBe("false");
  await take.click();
  await expect.poll(() => session.route().pole.size).toBe(2);
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().pole.size).toBe(0);
  expect(complaints).toEqual([]);
  await opened.close();
});

test("a column the guess missed can be chosen by hand", async () => {
  const opened = await demo.openEmpty(browser);
  const { page } = opened;
  await page.keyboard.press("Control+i");
  await chooseFile(page, "poles.csv", poles.replace("tag,", "wooden thing,"));
  const tag = page.getByLabel("Tag", { exact: false }).first();
  await tag.selectOption("wooden thing");
  await expect.poll(() => tag.inputValue()).toBe("wooden thing");
  await page.getByText(/^\d+ new/).waitFor();
  await opened.close();
});

test("from four lists to hung terminals: import each, lay out, and every step can be taken back", async () => {
  const opened = await demo.openEmpty(browser);
  const { page, session, complaints } = opened;
  const lists = makeDemoLists(demoSeed);
  await page.keyboard.press("Control+i");
  for (const [words, text, table] of [
    ["Poles", lists.poles, "pole"],
    ["Living units", lists.addresses, "livingUnit"],
    ["Attachments on poles", lists.attachments, "attachment"],
    ["Crossings under spans", lists.crossings, "crossing"],
  ] as const) {
    await page.getByLabel("What the file lists").selectOption({ label: words });
    await chooseFile(page, `${table}.csv`, text);
    const take = page.getByRole("button", { name: /^Take \d+ rows in$/ });
    await expect.poll(() => take.getAttribute("aria-disabled")).toBe("false");
    await take.click();
    await expect.poll(() => session.route()[table].size).toBeGreaterThan(10);
    await page.getByText("It is shown here as it will be read").waitFor();
  }
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Lay out terminals" }).click();
  await expect.poll(() => session.route().terminal.size, { timeout: 60_000 }).toBeGreaterThan(10);
  await expect
    .poll(async () => (await visibleIds(page)).filter((id) => session.route().terminal.has(id)).length)
    .toBeGreaterThan(10);
  for (let left = 5; left > 0; left -= 1) {
    const name = await page.getByRole("button", { name: /^Undo ./ }).getAttribute("aria-label");
    await page.keyboard.press("Control+z");
    await page.getByRole("button", { name: name ?? "", exact: true }).waitFor({ state: "detached" });
  }
  expect(session.route().pole.size).toBe(0);
  expect(complaints).toEqual([]);
  await opened.close();
});

test("a list of guys is matched, its bad row told, and the good ones taken as one edit", async () => {
  const opened = await demo.open(browser);
  const { page, session, complaints } = opened;
  const before = session.route().guy.size;
  const [first, second] = [...session.route().pole.values()].filter((pole) =>
    [...session.route().guy.values()].every((guy) => guy.poleId !== pole.id),
  );
  const list = ["Pole,Guy height ft,Lead ft,Bearing,Anchor capacity lbf", `${first?.tag},20,15,270,8000`];
  await page.keyboard.press("Control+i");
  await page.getByLabel("What the file lists").selectOption("guy");
  await chooseFile(page, "guys.csv", [...list, `${second?.tag},20,,90,8000`].join("\n"));
  const rows = await page.getByRole("table", { name: "Bad rows" }).getByRole("row").allTextContents();
  expect(rows.some((text) => /^3.*The guy has no lead\./.test(text))).toBe(true);
  await page.getByLabel("Take the good rows when others are bad").check();
  await page.getByRole("button", { name: "Take 1 row in" }).click();
  await expect.poll(() => session.route().guy.size).toBe(before + 1);
  const added = [...session.route().guy.values()].find((guy) => guy.poleId === first?.id);
  expect(added).toMatchObject({ leadM: 4.572, anchorN: 35585.77 });
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().guy.size).toBe(before);
  expect(complaints).toEqual([]);
  await opened.close();
});

test("a list of what lies under drops is matched by address, and taken as one edit", async () => {
  const opened = await demo.open(browser);
  const { page, session, complaints } = opened;
  const before = session.route().dropCrossing.size;
  const [unit] = session.route().livingUnit.values();
  const list = ["Address,Surface,Distance ft,Width ft,Elevation ft", `${unit?.address},driveway,20,10,`];
  await page.keyboard.press("Control+i");
  await page.getByLabel("What the file lists").selectOption({ label: "Things under drops" });
  await chooseFile(page, "drops.csv", [...list, `${unit?.address},roof,40,12,`].join("\n"));
  const rows = await page.getByRole("table", { name: "Bad rows" }).getByRole("row").allTextContents();
  expect(rows.some((text) => /^3.*The roof has no elevation\./.test(text))).toBe(true);
  await page.getByLabel("Take the good rows when others are bad").check();
  await page.getByRole("button", { name: "Take 1 row in" }).click();
  await expect.poll(() => session.route().dropCrossing.size).toBe(before + 1);
  const added = [...session.route().dropCrossing.values()].at(-1);
  expect(added).toMatchObject({ livingUnitId: unit?.id, surface: "driveway", fromUnitM: 6.096 });
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().dropCrossing.size).toBe(before);
  expect(complaints).toEqual([]);
  await opened.close();
});

test("poles of a KML file are chosen with the mouse, their folder and height matched by hand, and stand where the file says; dropped on the window it is read too", async () => {
  const opened = await demo.openEmpty(browser);
  const { page, session, complaints } = opened;
  const placemark = (tag: string, latDeg: number, size: string) =>
    `<Placemark><name>${tag}</name><ExtendedData><Data name="bought as"><value>${size}</value></Data></ExtendedData>
      <Point><coordinates>-95.9,${latDeg},0</coordinates></Point></Placemark>`;
  const folder = [placemark("Q-1", 41.2, "40-4"), placemark("Q-2", 41.2004, "40-4"), placemark("Q-3", 41.2008, "35-5")];
  const file = `<?xml version="1.0"?><kml xmlns="http://www.opengis.net/kml/2.2"><Document>
    <Folder><name>Elm Street</name>${folder.join("")}</Folder>
    <Placemark><name>Q-9</name><Point><coordinates>-95.9 41.2</coordinates></Point></Placemark></Document></kml>`;
  await page.locator(".stage").getByRole("button", { name: "Import" }).click();
  const chooser = page.waitForEvent("filechooser");
  await page.getByLabel("File", { exact: true }).click();
  await (await chooser).setFiles({
    name: "elm.kml",
    mimeType: "application/vnd.google-earth.kml+xml",
    buffer: Buffer.from(file),
  });
  await page.getByRole("table", { name: "First rows" }).getByRole("cell", { name: "Elm Street" }).first().waitFor();
  const bad = await page.getByRole("table", { name: "Bad rows" }).getByRole("row").allTextContents();
  expect(bad[0]).toMatch(/^Placemark/);
  expect(bad.some((text) => /^4.*Q-9.*A position needs a longitude and a latitude\./.test(text))).toBe(true);
  await page.getByRole("combobox", { name: "Line", exact: true }).selectOption("folder");
  await page.getByRole("combobox", { name: "Pole length", exact: true }).selectOption("bought as");
  await page.getByLabel("Take the good rows when others are bad").check();
  await page.getByRole("button", { name: "Take 3 rows in" }).click();
  await expect.poll(() => session.route().pole.size).toBe(3);
  const [first] = [...session.route().pole.values()].filter((pole) => pole.tag === "Q-1");
  expect(first).toMatchObject({ line: "Elm Street", poleClass: "4" });
  expect(session.route().settings.get("settings")).toMatchObject({ originLonDeg: expect.closeTo(-95.9, 2) });
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().pole.size).toBe(0);
  await page.evaluate((text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], "elm.kml"));
    document.body.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
  }, file);
  await page.getByRole("table", { name: "First rows" }).getByRole("cell", { name: "Elm Street" }).first().waitFor();
  expect(complaints).toEqual([]);
  await opened.close();
});

import { readFileSync } from "node:fs";
import type { Download, Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { tableNames } from "../../core/model/tables.ts";
import type { Session } from "../../electron/host/session.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened, openEmpty } = eachOnDemo();

async function openSettings(page: Page): Promise<Locator> {
  await page.keyboard.press("Control+,");
  const room = page.getByRole("region", { name: "Standards and catalogues" });
  await room.waitFor();
  return room;
}

async function section(room: Locator, name: string): Promise<void> {
  await room.getByRole("navigation", { name: "Sections" }).getByRole("button", { name, exact: true }).click();
}

async function type(room: Locator, field: string, text: string): Promise<void> {
  const input = room.getByLabel(field, { exact: true });
  await input.fill(text);
  await input.press("Enter");
}

/** Every row of the route as text, settings of units on screen aside. */
function rowsText(session: Session): string {
  const route = session.route();
  return JSON.stringify(tableNames.map((name) => [...route[name]]));
}

async function bytesOf(download: Download): Promise<Buffer> {
  return readFileSync(await download.path());
}

test("a standard is typed in any unit, told with its meaning and basis, and taken back by one undo", async () => {
  const { page, session } = opened();
  const room = await openSettings(page);
  await room.getByText("company setting, 36 in from the pole's centre line").waitFor();
  await type(room, "Terminal offset", "1.016 m");
  await expect.poll(() => session.plant.settings().standoffM).toBe(1.016);
  await expect.poll(() => room.getByLabel("Terminal offset", { exact: true }).inputValue()).toBe("40 in");
  await room.getByText("changed in this route: the company's own").first().waitFor();
  await page.getByRole("button", { name: /^Undo ./ }).click();
  await expect.poll(() => session.plant.settings().standoffM).toBe(0.9144);
});

test("nonsense in a standard is marked where it stands, loses nothing, and Escape gives it up", async () => {
  const { page, session } = opened();
  const room = await openSettings(page);
  const field = room.getByLabel("Drop reach", { exact: true });
  await field.fill("far");
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  expect(await room.getByRole("alert").textContent()).toContain("cannot be read");
  await field.press("Enter");
  expect(await field.inputValue()).toBe("far");
  expect(session.plant.settings().dropReachM).toBe(91.44);
  await field.press("Escape");
  expect(await field.inputValue()).toBe("300 ft");
});

test("the units switch changes what is read and never a row: twenty switches leave every byte", async () => {
  const { page, session } = opened();
  const before = rowsText(session);
  for (let turn = 0; turn < 20; turn += 1) {
    const isUs = turn % 2 === 0;
    await page.getByRole("button", { name: isUs ? "Switch to metric units" : "Switch to feet and inches" }).click();
    await expect.poll(() => session.plant.settings().unitSystem).toBe(isUs ? "metric" : "us");
  }
  expect(rowsText(session)).toBe(before);
  await page.getByRole("button", { name: "Switch to metric units" }).click();
  const room = await openSettings(page);
  await expect.poll(() => room.getByLabel("Terminal offset", { exact: true }).inputValue()).toBe("0.9144 m");
  await type(room, "Terminal offset", "40 in");
  await expect.poll(() => session.plant.settings().standoffM).toBe(1.016);
  await type(room, "Terminal offset", "36 in");
  await expect.poll(() => session.plant.settings().standoffM).toBe(0.9144);
});

test("a published figure that is changed becomes the company's own, and a mark can be given with where it was read", async () => {
  const { page, session } = opened();
  const room = await openSettings(page);
  await section(room, "Strand");
  const [id = ""] = session.route().strandType.keys();
  const row = () => session.route().strandType.get(id);
  expect(row()?.basisMark).toBe("memory");
  await type(room, "Rated breaking strength", "2500 lbf");
  await expect.poll(() => row()?.basisMark).toBe("practice");
  expect(row()?.basisClause).toContain("changed by the company");
  await type(room, "Clause", "maker's sheet, page 2");
  await expect.poll(() => row()?.basisClause).toBe("maker's sheet, page 2");
  await room.getByLabel("Mark", { exact: true }).selectOption("seen");
  await expect.poll(() => row()?.basisMark).toBe("seen");
});

test("catalogue rows are added, copied and removed; one in use is not, and it is said by what", async () => {
  const { page, session } = opened();
  const room = await openSettings(page);
  await section(room, "Drop cable");
  const count = session.route().dropType.size;
  await room.getByRole("button", { name: "Remove the row" }).click();
  expect(await page.locator(".alert").textContent()).toContain("is in use by the company standards");
  await page.keyboard.press("Escape");
  await room.getByRole("button", { name: "Copy the row" }).click();
  await expect.poll(() => session.route().dropType.size).toBe(count + 1);
  await room.getByRole("button", { name: "Add a row" }).click();
  await expect.poll(() => session.route().dropType.size).toBe(count + 2);
  await expect.poll(() => room.getByLabel("Clause", { exact: true }).inputValue()).toContain("figures stand in");
  await room.getByRole("button", { name: "Remove the row" }).click();
  await expect.poll(() => session.route().dropType.size).toBe(count + 1);
});

test("standards go out as a template and into another route as one undo", async () => {
  const { page, session } = opened();
  const room = await openSettings(page);
  await type(room, "Terminal offset", "40 in");
  await expect.poll(() => session.plant.settings().standoffM).toBe(1.016);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    room.getByRole("button", { name: "Export as a template" }).click(),
  ]);
  const buffer = await bytesOf(download);
  const other = await openEmpty();
  try {
    const theirs = await openSettings(other.page);
    await theirs
      .getByLabel("Import a template")
      .setInputFiles({ name: "ours.json", mimeType: "application/json", buffer });
    await expect.poll(() => other.session.plant.settings().standoffM).toBe(1.016);
    expect(other.session.plant.settings().routeName).toBe("Empty route");
    await other.page.getByRole("button", { name: /^Undo take the standards of ours\.json/ }).click();
    await expect.poll(() => other.session.plant.settings().standoffM).toBe(0.9144);
    const bad = { name: "poles.csv", mimeType: "text/csv", buffer: Buffer.from("pole,height") };
    await theirs.getByLabel("Import a template").setInputFiles(bad);
    await other.page.getByText("This file is not a template of standards.").waitFor();
  } finally {
    await other.close();
  }
});

test("the sheet index leads to each sheet, match lines lead on, and a range is drawn alone at true size", async () => {
  const { page } = opened();
  await page.getByRole("button", { name: "Preview sheets" }).click();
  const index = page.getByRole("navigation", { name: "Sheets" });
  await index.getByRole("listitem").nth(9).getByRole("button").click();
  await page.getByRole("img", { name: /^Sheet 10, / }).waitFor();
  await index.getByRole("listitem").nth(1).getByRole("button").click();
  await page.getByRole("img", { name: /^Sheet 2, / }).waitFor();
  await page.getByRole("button", { name: "Go to sheet 3", exact: true }).first().click();
  await page.getByRole("img", { name: /^Sheet 3, / }).waitFor();
  const width = async () => (await page.locator(".paper-sheet").boundingBox())?.width ?? 0;
  const whole = await width();
  await page.getByRole("button", { name: "Enlarge the sheet" }).click();
  expect(await width()).toBeCloseTo(whole * 1.25, 0);
  await page.getByLabel("Sheets to draw").selectOption("range");
  await page.getByLabel("Numbers, such as 3-5, 9").fill("3-5");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Draw these sheets" }).click(),
  ]);
  const pdf = (await bytesOf(download)).toString("latin1");
  const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
  expect(boxes).toHaveLength(3);
  expect(boxes.map((box) => [Number(box[1]), Number(box[2])])).toEqual(Array(3).fill([1224, 792]));
});

test("panels keep the size they were given, and can be put back", async () => {
  const { page } = opened();
  const divider = page.getByRole("separator", { name: "Width of the side panel" });
  const side = page.getByRole("complementary", { name: "What is chosen" });
  const width = async () => Math.round((await side.boundingBox())?.width ?? 0);
  expect(await width()).toBe(320);
  await divider.focus();
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("ArrowLeft");
  expect(await width()).toBe(352);
  const box = await divider.boundingBox();
  if (!box) throw new Error("the divider is not on the page");
  await page.mouse.move(box.x + box.width / 2, box.y + 200);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 - 48, box.y + 200, { steps: 3 });
  await page.mouse.up();
  await expect.poll(width).toBeGreaterThan(390);
  const given = await width();
  await page.reload();
  await side.waitFor();
  await expect.poll(width).toBe(given);
  await page.getByRole("button", { name: "Put the panels back as they were at first" }).click();
  await expect.poll(width).toBe(320);
});

test("general notes of several lines, the line of the title block, paper and sheets left out are the route's own, each one undo", async () => {
  const { page, session } = opened();
  await page.keyboard.press("Control+,");
  const room = page.getByRole("region", { name: "Standards and catalogues" });
  const settings = () => session.plant.settings();
  await room.getByLabel("Notes of the company").focus();
  await page.keyboard.type("Bond at every pole.");
  await page.keyboard.press("Enter");
  await page.keyboard.type("Call before you dig.");
  await page.keyboard.press("Tab");
  await expect.poll(() => settings().generalNotes).toBe("Bond at every pole.\nCall before you dig.");
  await room.getByLabel("Line of the title block").fill("Permit 2030-114");
  await page.keyboard.press("Enter");
  await expect.poll(() => settings().titleLine).toBe("Permit 2030-114");
  await room.getByLabel("Paper").selectOption("ANSI D");
  await expect.poll(() => settings().paper).toBe("ANSI D");
  const guys = room.getByRole("group", { name: "Sheets of the set" }).getByLabel("Guy schedule");
  await guys.press("Space");
  await expect.poll(() => settings().sheetsLeftOut).toBe("guy");
  await expect.poll(() => guys.isChecked()).toBe(false);
  await page.keyboard.press("Control+z");
  await expect.poll(() => settings().sheetsLeftOut).toBe("");
});

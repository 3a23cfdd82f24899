import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { launchChromium } from "./chromium.ts";
import { pointOf, selection } from "./diagram.ts";
import { type Demo, makeDemo, type OpenWindow } from "./openWindow.ts";

let browser: Browser;
let demo: Demo;
let opened: OpenWindow;

beforeAll(async () => {
  [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
});
afterAll(async () => {
  await browser.close();
  demo.remove();
});
beforeEach(async () => {
  opened = await demo.open(browser, { permissions: ["clipboard-read", "clipboard-write"] });
});
afterEach(async () => {
  await opened.close();
});

const metresPerFoot = 0.3048;

async function showTable(page: Page, name: string): Promise<void> {
  await page.keyboard.press("Control+g");
  await page.getByRole("tab", { name, exact: true }).click();
  await page.getByRole("grid", { name, exact: true }).focus();
}

async function colOf(page: Page, heading: string): Promise<number> {
  const texts = await page
    .getByRole("columnheader")
    .evaluateAll((all) => all.map((one) => one.querySelector("span")?.textContent));
  const col = texts.indexOf(heading);
  if (col < 0) throw new Error(`no column ${heading} among ${texts.join(", ")}`);
  return col;
}

async function cellAt(page: Page, row: number, heading: string) {
  return page.locator(`[data-cell="${row} ${await colOf(page, heading)}"]`);
}

async function toClipboard(page: Page, text: string): Promise<void> {
  await page.evaluate((words) => navigator.clipboard.writeText(words), text);
}

test("a grid is one tab stop, tells how many rows and columns it has, and arrows walk in it", async () => {
  const { page, session } = opened;
  await showTable(page, "Poles");
  const grid = page.getByRole("grid", { name: "Poles" });
  expect(await grid.getAttribute("aria-rowcount")).toBe(String(session.route().pole.size + 1));
  expect(Number(await grid.getAttribute("aria-colcount"))).toBe(await page.getByRole("columnheader").count());
  const active = () => grid.getAttribute("aria-activedescendant");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowRight");
  expect(await active()).toBe("cell-1-1");
  await page.keyboard.press("End");
  await page.keyboard.press("Control+Home");
  expect(await active()).toBe("cell-0-0");
  await page.keyboard.press("Control+End");
  expect(await active()).toMatch(new RegExp(`^cell-${session.route().pole.size - 1}-`));
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.closest("[role=grid]") === null)).toBe(true);
});

test("every kind of row has its table, and each cell can be read", async () => {
  const { page, complaints } = opened;
  await page.keyboard.press("Control+g");
  const names = await page.getByRole("tab").allTextContents();
  expect(names).toHaveLength(22);
  for (const name of names) {
    await page.getByRole("tab", { name, exact: true }).click();
    await page.getByRole("grid", { name, exact: true }).waitFor();
  }
  await page.getByRole("tab", { name: "Ports", exact: true }).click();
  expect(Number(await page.getByRole("grid").getAttribute("aria-rowcount"))).toBeGreaterThan(50);
  expect(complaints).toEqual([]);
});

test("arrows walk along the tabs: the hand stays on them and the chosen one is in sight", async () => {
  const { page } = opened;
  await page.keyboard.press("Control+g");
  await page.getByRole("tab", { name: "Poles", exact: true }).focus();
  for (const name of ["Punch list", "Readings", "Feeds"]) {
    await page.keyboard.press("ArrowLeft");
    await page.getByRole("grid", { name, exact: true }).waitFor();
    const tab = page.getByRole("tab", { name, exact: true });
    await expect.poll(() => tab.evaluate((one) => one === document.activeElement)).toBe(true);
    const isInSight = tab.evaluate((one) => {
      const [box, list] = [one.getBoundingClientRect(), one.parentElement?.getBoundingClientRect()];
      return list !== undefined && box.left >= list.left - 1 && box.right <= list.right + 1;
    });
    expect(await isInSight).toBe(true);
  }
});

test("choosing a row chooses it on the diagram, and choosing on the diagram scrolls to the row", async () => {
  const { page, session } = opened;
  await showTable(page, "Poles");
  const ids = [...session.route().pole.keys()];
  await (await cellAt(page, 2, "Tag")).click();
  expect(await selection(page)).toEqual([ids[2]]);
  const last = ids.at(-3) ?? "";
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("0");
  const { x, y } = await pointOf(page, last);
  await page.mouse.click(x, y);
  const [chosen = ""] = await selection(page);
  const tag = session.route().pole.get(chosen)?.tag;
  if (tag === undefined) throw new Error("the click did not choose a pole");
  const row = page.locator('.grid-row[aria-selected="true"]');
  await expect.poll(() => row.locator(".grid-cell").first().textContent()).toBe(tag);
  expect(await row.isVisible()).toBe(true);
});

test("a block from a spreadsheet lines up, bad cells keep what was typed with the reason, one undo takes it all back", async () => {
  const { page, session } = opened;
  await showTable(page, "Poles");
  const before = session.route().pole;
  const ids = [...before.keys()].slice(0, 50);
  const lines = ids.map((_, i) =>
    [`${i % 5}`, i === 7 ? "tall" : `${30 + (i % 9)}`, i < 2 ? "low" : "1200 ft", `Owner ${i}`].join("\t"),
  );
  await toClipboard(page, lines.join("\r\n"));
  await (await cellAt(page, 0, "Class")).click();
  await page.keyboard.press("Control+v");
  await expect.poll(() => session.route().pole.get(ids[49] ?? "")?.owner).toBe("Owner 49");
  expect(session.route().pole.get(ids[3] ?? "")).toMatchObject({ poleClass: "3", owner: "Owner 3" });
  expect(session.route().pole.get(ids[3] ?? "")?.aboveGroundM).toBeCloseTo(33 * metresPerFoot, 9);
  expect(session.route().pole.get(ids[3] ?? "")?.groundM).toBeCloseTo(1200 * metresPerFoot, 9);
  await page.getByText("3 cells were not taken").waitFor();
  await page.keyboard.press("Control+Home");
  const bad = page.locator('[role=gridcell][aria-invalid="true"]');
  expect(await bad.count()).toBe(3);
  expect(await (await cellAt(page, 7, "Above ground (ft)")).textContent()).toBe("! tall");
  expect(await (await cellAt(page, 7, "Above ground (ft)")).getAttribute("aria-description")).toContain("tall");
  await page.keyboard.press("Control+z");
  await expect.poll(() => [...session.route().pole.values()]).toEqual([...before.values()]);
});

test("a range is copied as lines of fields and as a table, and nothing in it becomes a formula", async () => {
  const { page, session } = opened;
  await showTable(page, "Poles");
  const note = await cellAt(page, 0, "Note");
  await note.scrollIntoViewIfNeeded();
  await note.dblclick();
  await page.keyboard.type("=1+1");
  await page.keyboard.press("Enter");
  const [first = ""] = session.route().pole.keys();
  await expect.poll(() => session.route().pole.get(first)?.note).toBe("=1+1");
  await page.keyboard.press("Control+Home");
  await page.keyboard.press("End");
  for (let i = 0; i < 4; i += 1) await page.keyboard.press("Shift+ArrowLeft");
  for (let i = 0; i < 9; i += 1) await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Control+c");
  const [text, html] = await page.evaluate(async () => {
    const [item] = await navigator.clipboard.read();
    return [await navigator.clipboard.readText(), (await (await item?.getType("text/html"))?.text()) ?? ""];
  });
  const lines = text.split(/\r?\n/);
  expect(lines).toHaveLength(10);
  expect(lines.map((line) => line.split("\t").length)).toEqual(Array(10).fill(5));
  expect(lines[0]?.split("\t").at(-1)).toBe("'=1+1");
  expect(html).toContain("<td>'=1+1</td>");
});

test("F2 or a double click edits in place, Enter keeps and goes down, Tab goes on, Esc gives up", async () => {
  const { page, session } = opened;
  await showTable(page, "Poles");
  const [a = "", b = ""] = session.route().pole.keys();
  const [tagA, ownerB] = [session.route().pole.get(a)?.tag, session.route().pole.get(b)?.owner];
  await (await cellAt(page, 0, "Tag")).click();
  await page.keyboard.press("F2");
  await page.keyboard.type("X-1");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.route().pole.get(a)?.tag).toBe("X-1");
  expect(await page.getByRole("grid").getAttribute("aria-activedescendant")).toBe("cell-1-0");
  await (await cellAt(page, 1, "Class")).dblclick();
  await page.keyboard.type("4");
  await page.keyboard.press("Tab");
  await expect.poll(() => session.route().pole.get(b)?.poleClass).toBe("4");
  await (await cellAt(page, 1, "Owner")).dblclick();
  await page.keyboard.type("nobody");
  await page.keyboard.press("Escape");
  expect(session.route().pole.get(b)?.owner).toBe(ownerB);
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().pole.get(a)?.tag).toBe(tagA);
});

test("while one types, a value that cannot be read says why and stays; a warning lets through", async () => {
  const { page, session } = opened;
  await showTable(page, "Spans");
  const [id = ""] = session.route().span.keys();
  const lengthM = session.route().span.get(id)?.lengthM;
  await (await cellAt(page, 0, "Length (ft)")).dblclick();
  await page.keyboard.type("far");
  const field = page.locator(".cell-editor input");
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  const described = await field.getAttribute("aria-describedby");
  expect(await page.locator(`[id="${described}"]`).textContent()).toContain("cannot be read as a length");
  await page.keyboard.press("Enter");
  expect(await field.inputValue()).toBe("far");
  expect(session.route().span.get(id)?.lengthM).toBe(lengthM);
  await field.fill("999 ft");
  expect(await field.getAttribute("aria-invalid")).toBe("false");
  expect(await page.locator(".cell-said").textContent()).toContain("taken all the same");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.route().span.get(id)?.lengthM).toBeCloseTo(999 * metresPerFoot, 9);
});

test("sorting by two keys, a filter with its count, and a reload that keeps both until reset", async () => {
  const { page, session } = opened;
  await showTable(page, "Living units");
  await page
    .getByRole("columnheader")
    .nth(await colOf(page, "Kind"))
    .click();
  const address = page.getByRole("columnheader").first();
  await address.click({ modifiers: ["Shift"] });
  await address.click({ modifiers: ["Shift"] });
  const shown = await page.locator(".grid-row .grid-cell:first-child").allTextContents();
  const collator = new Intl.Collator("en", { numeric: true, sensitivity: "base" });
  const wanted = [...session.route().livingUnit.values()].sort(
    (a, b) => collator.compare(a.kind, b.kind) || collator.compare(b.address, a.address),
  );
  expect(shown.slice(0, 5)).toEqual(wanted.slice(0, 5).map((one) => one.address));
  await page.getByRole("button", { name: "Sort, filter and place Address" }).click();
  const part = wanted[0]?.address.split(" ").at(-2) ?? "";
  await page.getByLabel("Contains, or such as >150").fill(part);
  await page.keyboard.press("Escape");
  const hits = wanted.filter((one) => one.address.toLowerCase().includes(part.toLowerCase())).length;
  const count = () => page.getByRole("grid").getAttribute("aria-rowcount");
  await expect.poll(count).toBe(String(hits + 1));
  await page.reload();
  await page.locator("canvas").first().waitFor();
  await showTable(page, "Living units");
  await expect.poll(count).toBe(String(hits + 1));
  expect(await page.getByRole("columnheader").first().getAttribute("aria-sort")).toBe("descending");
  await page.getByRole("button", { name: "Reset the columns" }).click();
  await expect.poll(count).toBe(String(wanted.length + 1));
});

test("fill down and the handle write editable cells only, and a name's number goes on", async () => {
  const { page, session } = opened;
  await showTable(page, "Poles");
  const ids = [...session.route().pole.keys()].slice(0, 20);
  await (await cellAt(page, 0, "Owner")).dblclick();
  await page.keyboard.type("Valley Power");
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowUp");
  for (let i = 0; i < 19; i += 1) await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Control+d");
  await expect.poll(() => ids.map((id) => session.route().pole.get(id)?.owner)).toEqual(Array(20).fill("Valley Power"));
  const filled = session.route();
  await page.keyboard.press("Control+Home");
  const computed = await cellAt(page, 0, "Spans");
  await computed.click();
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Control+d");
  expect(session.route()).toBe(filled);
  await page.keyboard.press("Control+Home");
  const line = await cellAt(page, 0, "Line");
  await line.dblclick();
  await page.keyboard.type("L-08");
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowUp");
  const handle = await page.locator(".fill-handle").boundingBox();
  const target = await (await cellAt(page, 3, "Line")).boundingBox();
  if (!handle || !target) throw new Error("the handle is not on the page");
  await page.mouse.move(handle.x + 4, handle.y + 4);
  await page.mouse.down();
  await page.mouse.move(target.x + 10, target.y + 10, { steps: 4 });
  await page.mouse.up();
  await expect
    .poll(() => ids.slice(0, 4).map((id) => session.route().pole.get(id)?.line))
    .toEqual(["L-08", "L-09", "L-10", "L-11"]);
});

test("the status strip tells count, sum, least, most and mean of the selected figures with their unit", async () => {
  const { page, session } = opened;
  await showTable(page, "Spans");
  const lengthsFt = [...session.route().span.values()].slice(0, 4).map((one) => one.lengthM / metresPerFoot);
  await (await cellAt(page, 0, "Length (ft)")).click();
  for (let i = 0; i < 3; i += 1) await page.keyboard.press("Shift+ArrowDown");
  const sum = lengthsFt.reduce((all, one) => all + one, 0);
  const words = (figure: number): string => String(Number(figure.toFixed(2)));
  expect(await page.locator(".table-totals").textContent()).toBe(
    `Count 4 · Sum ${words(sum)} ft · Min ${words(Math.min(...lengthsFt))} ft · Max ${words(Math.max(...lengthsFt))} ft · Mean ${words(sum / 4)} ft`,
  );
});

test("the menu of a cell names actions of the window, by the right button and by Shift+F10", async () => {
  const { page } = opened;
  await showTable(page, "Poles");
  await (await cellAt(page, 1, "Owner")).click({ button: "right" });
  const items = page.getByRole("menuitem");
  await items.first().waitFor();
  const names = await items.allTextContents();
  expect(names.some((name) => name.startsWith("Fill down"))).toBe(true);
  await page.keyboard.press("Escape");
  await items.first().waitFor({ state: "detached" });
  await page.keyboard.press("Shift+F10");
  await items.first().waitFor();
  expect(await items.allTextContents()).toEqual(names);
});

test("rows are added and removed in the table, each in one step that can be taken back", async () => {
  const { page, session } = opened;
  await showTable(page, "Attachments");
  const before = session.route().attachment.size;
  await page.keyboard.press("Control+Enter");
  await expect.poll(() => session.route().attachment.size).toBe(before + 1);
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Control+Delete");
  await expect.poll(() => session.route().attachment.size).toBe(before - 1);
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().attachment.size).toBe(before + 1);
});

test("a change typed for a selection goes into all its rows at once", async () => {
  const { page, session } = opened;
  await showTable(page, "Poles");
  const ids = [...session.route().pole.keys()].slice(0, 6);
  await (await cellAt(page, 0, "Class")).click();
  for (let i = 0; i < 5; i += 1) await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.type("H2");
  await page.keyboard.press("Control+Enter");
  await expect.poll(() => ids.map((id) => session.route().pole.get(id)?.poleClass)).toEqual(Array(6).fill("H2"));
  await page.getByRole("button", { name: "Undo change 6 cells" }).waitFor();
});

test("the divider moves by keys, and its place is kept", async () => {
  const { page } = opened;
  await page.keyboard.press("Control+g");
  const tables = page.getByRole("region", { name: "Tables" });
  const height = async () => Math.round((await tables.boundingBox())?.height ?? 0);
  const before = await height();
  await page.getByRole("separator", { name: /^Size of the tables/ }).focus();
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  await expect.poll(height).toBeGreaterThan(before);
  const after = await height();
  await page.reload();
  await page.locator("canvas").first().waitFor();
  await page.keyboard.press("Control+g");
  await expect.poll(height).toBe(after);
});

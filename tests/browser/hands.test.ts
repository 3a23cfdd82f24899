import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { portsOf } from "../../../core/plant/terminalView.ts";
import { launchChromium } from "../chromium.ts";
import { pointOf, scale, selection, visibleIds } from "../diagram.ts";
import { type Demo, makeDemo, type OpenWindow } from "../openWindow.ts";

let browser: Browser;
let demo: Demo;
let opened: OpenWindow;
let page: Page;

beforeAll(async () => {
  [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
});
afterAll(async () => {
  await browser.close();
  demo.remove();
});
beforeEach(async () => {
  opened = await demo.open(browser);
  page = opened.page;
});
afterEach(async () => {
  expect(opened.complaints).toEqual([]);
  await opened.close();
});

function terminal(id: string) {
  const row = opened.session.route().terminal.get(id);
  if (!row) throw new Error(`terminal ${id} is gone`);
  return row;
}

/** A terminal that hangs at the standard distance from the first pole of a span with room, its neighbour none. */
function lonelyTerminal(): string {
  const { plant } = opened.session;
  for (const { id, spanId, offsetM } of opened.session.route().terminal.values()) {
    const alone = plant.where("terminal", "spanId", spanId).length === 1;
    const { lengthM } = plant.rowOf("span", spanId);
    if (alone && lengthM > 35 && Math.abs(offsetM - plant.settings().standoffM) < 1e-6) return id;
  }
  throw new Error("the demo route has no terminal alone in its span");
}

async function zoomOn(id: string, turnCount: number): Promise<void> {
  for (let turn = 0; turn < turnCount; turn += 1) {
    const { x, y } = await pointOf(page, id);
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, -200);
    await page.waitForTimeout(30);
  }
}

/** Pixels on the page that a metre along a terminal's span takes, from its first pole on. */
async function metreAlong(id: string): Promise<readonly [number, number]> {
  const { fromPoleId, toPoleId, lengthM } = opened.session.plant.rowOf("span", terminal(id).spanId);
  const [from, to] = [await pointOf(page, fromPoleId), await pointOf(page, toPoleId)];
  return [(to.x - from.x) / lengthM, (to.y - from.y) / lengthM];
}

/** Takes hold of a terminal and carries it so many metres along its span; the button stays down. */
async function carry(id: string, byM: number): Promise<void> {
  const [dx, dy] = await metreAlong(id);
  const { x, y } = await pointOf(page, id);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + dx * byM, y + dy * byM, { steps: 6 });
}

async function chooseOn(id: string): Promise<void> {
  const { x, y } = await pointOf(page, id);
  await page.mouse.click(x, y);
  await expect.poll(() => selection(page)).toEqual([id]);
}

const undoName = (): string | null => opened.session.history().undo;

test("a terminal dragged near the standard distance snaps to it and one sees by what; with Mod held it does not", async () => {
  const id = lonelyTerminal();
  const { standoffM } = opened.session.plant.settings();
  await zoomOn(id, 7);
  await page.keyboard.down("Control");
  await carry(id, 4);
  const chip = page.locator(".hand-chip");
  expect(await chip.textContent()).toMatch(/from pole \S+/);
  expect(await chip.locator(".hand-snap").count()).toBe(0);
  await page.mouse.up();
  await page.keyboard.up("Control");
  await expect.poll(() => terminal(id).offsetM).toBeGreaterThan(standoffM + 3.5);
  expect(terminal(id).offsetM).toBeLessThan(standoffM + 4.5);
  await chip.waitFor({ state: "detached" });

  const pxPerM = Math.hypot(...(await metreAlong(id)));
  await carry(id, standoffM - terminal(id).offsetM + 4 / pxPerM);
  expect(await chip.locator(".hand-snap").textContent()).toBe("standard distance");
  await page.mouse.up();
  await expect.poll(() => terminal(id).offsetM).toBe(standoffM);
  await chip.waitFor({ state: "detached" });
  expect(undoName()).toBe(`Move terminal ${terminal(id).name}`);
});

test("Escape in the middle of a drag leaves the terminal where it was and makes no step", async () => {
  const id = lonelyTerminal();
  const before = terminal(id);
  const step = undoName();
  await zoomOn(id, 7);
  await carry(id, 5);
  await page.locator(".hand-chip").waitFor();
  await page.keyboard.press("Escape");
  await page.locator(".hand-chip").waitFor({ state: "detached" });
  await page.mouse.move(400, 300, { steps: 3 });
  await page.mouse.up();
  await page.waitForTimeout(150);
  expect(terminal(id)).toEqual(before);
  expect(undoName()).toBe(step);
});

test("a terminal can be dragged onto the neighbouring span of its cable", async () => {
  const id = lonelyTerminal();
  const { plant } = opened.session;
  const { spanId, cableId } = terminal(id);
  const poleId = plant.rowOf("span", spanId).fromPoleId;
  const other = [...plant.where("span", "fromPoleId", poleId), ...plant.where("span", "toPoleId", poleId)].find(
    (one) =>
      one !== spanId &&
      plant.where("cableRun", "spanId", one).some((run) => plant.rowOf("cableRun", run).cableId === cableId),
  );
  if (other === undefined) throw new Error("the terminal hangs at the end of its cable");
  await zoomOn(id, 5);
  const [from, to] = [await pointOf(page, id), await pointOf(page, other)];
  const pole = await pointOf(page, poleId);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(pole.x + (to.x - pole.x) * 0.5, pole.y + (to.y - pole.y) * 0.5, { steps: 8 });
  await page.mouse.up();
  await expect.poll(() => terminal(id).spanId).toBe(other);
  await page.keyboard.press("Control+z");
  await expect.poll(() => terminal(id).spanId).toBe(spanId);
});

test("the exact distance can be typed while dragging or after, in any length the trade writes; nonsense changes nothing", async () => {
  const id = lonelyTerminal();
  await zoomOn(id, 7);
  await carry(id, 3);
  await page.keyboard.type("5 ft");
  const field = page.getByLabel(/^Distance from pole /);
  expect(await field.inputValue()).toBe("5 ft");
  await page.mouse.up();
  await field.press("Enter");
  await expect.poll(() => terminal(id).offsetM).toBe(1.524);
  await field.waitFor({ state: "detached" });

  for (const [text, offsetM] of [
    ["36 in", 0.9144],
    ["0.9 m", 0.9],
    ["3'", 0.9144],
  ] as const) {
    await page.keyboard.press("Enter");
    await field.fill(text);
    await field.press("Enter");
    await expect.poll(() => terminal(id).offsetM).toBe(offsetM);
    await field.waitFor({ state: "detached" });
  }
  await page.keyboard.press("Enter");
  await field.fill("a bit more");
  await field.press("Enter");
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  await page.keyboard.press("Escape");
  await field.waitFor({ state: "detached" });
  expect(terminal(id).offsetM).toBe(0.9144);
});

test("five presses of an arrow nudge a terminal five inches, Shift ten more, and one undo takes them all back", async () => {
  const id = lonelyTerminal();
  const startM = terminal(id).offsetM;
  await zoomOn(id, 7);
  await chooseOn(id);
  const [dx, dy] = await metreAlong(id);
  const key = Math.abs(dx) > Math.abs(dy) ? (dx > 0 ? "ArrowRight" : "ArrowLeft") : dy > 0 ? "ArrowDown" : "ArrowUp";
  for (let count = 0; count < 5; count += 1) await page.keyboard.press(key);
  await page.keyboard.press(`Shift+${key}`);
  await expect.poll(() => terminal(id).offsetM).toBeCloseTo(startM + 15 * 0.0254, 9);
  await page.keyboard.press("Control+z");
  await expect.poll(() => terminal(id).offsetM).toBe(startM);
});

test("a chosen pole is moved by dragging and its spans follow; an unchosen one stays where it was surveyed", async () => {
  const { plant } = opened.session;
  const { spanId } = terminal(lonelyTerminal());
  const poleId = plant.rowOf("span", spanId).toPoleId;
  await zoomOn(poleId, 6);
  const before = plant.rowOf("pole", poleId);
  const lengthM = plant.rowOf("span", spanId).lengthM;
  const drag = async (): Promise<void> => {
    const { x, y } = await pointOf(page, poleId);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 14, y + 12, { steps: 5 });
    await page.mouse.up();
    await page.waitForTimeout(100);
  };
  await drag();
  expect(plant.rowOf("pole", poleId)).toEqual(before);
  await chooseOn(poleId);
  await drag();
  await expect.poll(() => opened.session.route().pole.get(poleId)?.eastM).not.toBe(before.eastM);
  expect(opened.session.route().span.get(spanId)?.lengthM).not.toBe(lengthM);
  await page.keyboard.press("Control+z");
  await expect.poll(() => opened.session.route().pole.get(poleId)).toEqual(before);
  expect(opened.session.route().span.get(spanId)?.lengthM).toBe(lengthM);
});

test("a drop's end is dragged to another port; a taken port is refused with the reason and nothing changes", async () => {
  const { plant } = opened.session;
  const found = [...opened.session.route().drop.values()].find(({ terminalId }) => {
    const ports = portsOf(plant, terminalId);
    return ports.some((one) => one.dropIds.length === 0) && ports.filter((one) => one.dropIds.length > 0).length > 1;
  });
  if (!found) throw new Error("the demo route has no terminal with used and spare ports");
  await zoomOn(found.livingUnitId, 4);
  await chooseOn(found.livingUnitId);
  await zoomOn(found.terminalId, 3);
  const ports = portsOf(plant, found.terminalId);
  const spare = ports.find((one) => one.dropIds.length === 0)?.port ?? 0;
  const taken = ports.find((one) => one.dropIds.length > 0 && one.port !== found.port)?.port ?? 0;
  const portPoint = (port: number) =>
    page.evaluate(([id, wanted]) => window.__view?.portToScreen(id, wanted) ?? null, [found.terminalId, port] as const);
  const drag = async (fromPort: number, toPort: number): Promise<void> => {
    const [from, to] = [await portPoint(fromPort), await portPoint(toPort)];
    if (!from || !to) throw new Error("the port is not drawn");
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, from.y + 30, { steps: 3 });
    await page.mouse.move(to.x, to.y, { steps: 4 });
  };
  await drag(found.port, taken);
  expect(await page.locator(".hand-refusal").textContent()).toMatch(/^Port \d+ of terminal \S+ serves /);
  await page.mouse.up();
  await page.locator(".hand-chip").waitFor({ state: "detached" });
  expect(opened.session.route().drop.get(found.id)?.port).toBe(found.port);
  await drag(found.port, spare);
  await page.mouse.up();
  await expect.poll(() => opened.session.route().drop.get(found.id)?.port).toBe(spare);
});

test("Delete takes what is chosen with what hangs on it, without a question, and the message offers the way back", async () => {
  const { spanId } = terminal(lonelyTerminal());
  const poleId = opened.session.plant.rowOf("span", spanId).toPoleId;
  const before = opened.session.route();
  await zoomOn(poleId, 5);
  await chooseOn(poleId);
  await page.keyboard.press("Delete");
  const toast = page.locator(".toast");
  await toast.waitFor();
  expect(await toast.textContent()).toMatch(/^Removed pole \S+, with .*\d+ spans?/);
  expect(await page.getByRole("dialog").count()).toBe(0);
  expect(opened.session.route().pole.has(poleId)).toBe(false);
  await toast.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => opened.session.route().pole.has(poleId)).toBe(true);
  expect(opened.session.route()).toEqual(before);
});

test("a dragged box takes what it encloses, with Alt what it touches; Mod+A takes all that is shown", async () => {
  const { spanId } = terminal(lonelyTerminal());
  const { fromPoleId, toPoleId } = opened.session.plant.rowOf("span", spanId);
  await zoomOn(fromPoleId, 5);
  const [from, to] = [await pointOf(page, fromPoleId), await pointOf(page, toPoleId)];
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const box = async (): Promise<void> => {
    await page.mouse.move(middle.x - 4, middle.y - 4);
    await page.mouse.down();
    await page.mouse.move(middle.x + 4, middle.y + 4, { steps: 4 });
    await page.mouse.up();
  };
  await page.keyboard.down("Shift");
  await box();
  expect(await selection(page)).not.toContain(spanId);
  await page.keyboard.down("Alt");
  await box();
  await page.keyboard.up("Alt");
  await page.keyboard.up("Shift");
  expect(await selection(page)).toContain(spanId);
  await page.keyboard.press("Control+a");
  const { pole, terminal: terminals, livingUnit } = opened.session.route();
  expect(await selection(page)).toEqual(
    expect.arrayContaining([...pole.keys(), ...terminals.keys(), ...livingUnit.keys()]),
  );
});

test("2 shows what is chosen, 1 is the named scale, and a reload comes back to the same view", async () => {
  const id = lonelyTerminal();
  await zoomOn(id, 5);
  await chooseOn(id);
  await page.keyboard.press("1");
  await expect.poll(() => scale(page)).toBeCloseTo(1, 6);
  await page.keyboard.press("2");
  await expect.poll(() => scale(page)).toBeGreaterThan(1);
  expect(await visibleIds(page)).toContain(id);
  const [before, point] = [await scale(page), await pointOf(page, id)];
  await page.waitForTimeout(500);
  await page.reload();
  await page.locator("canvas").first().waitFor();
  await expect.poll(() => scale(page)).toBeCloseTo(before, 6);
  await expect.poll(async () => (await pointOf(page, id)).x).toBeCloseTo(point.x, 3);
});

test("the menu of a terminal, by the right button and by Shift+F10, offers the same actions as elsewhere", async () => {
  const id = lonelyTerminal();
  await zoomOn(id, 6);
  const { x, y } = await pointOf(page, id);
  await page.mouse.click(x, y, { button: "right" });
  const menu = page.getByRole("menu");
  await menu.waitFor();
  const byPointer = await menu.getByRole("menuitem").allTextContents();
  expect(byPointer.length).toBeGreaterThan(3);
  expect(await selection(page)).toEqual([id]);
  await page.keyboard.press("Escape");
  await menu.waitFor({ state: "detached" });
  await page.keyboard.press("Shift+F10");
  await menu.waitFor();
  expect(await menu.getByRole("menuitem").allTextContents()).toEqual(byPointer);
  await menu.getByRole("menuitem", { name: /^Edit the name in place/ }).click();
  const field = page.getByLabel("Terminal name");
  await field.waitFor();
  await field.fill("T-right");
  await field.press("Enter");
  await expect.poll(() => terminal(id).name).toBe("T-right");
});

test("the menu of empty ground and of a span offers what can be done there", async () => {
  const { spanId } = terminal(lonelyTerminal());
  await zoomOn(spanId, 5);
  const { x, y } = await pointOf(page, spanId);
  await page.mouse.click(x, y, { button: "right" });
  const menu = page.getByRole("menu");
  await menu.getByRole("menuitem", { name: /^Remove span / }).waitFor();
  await page.keyboard.press("Escape");
  await menu.waitFor({ state: "detached" });
  await page.keyboard.press("Escape");
  await page.keyboard.press("0");
  await page.mouse.click(20, 140, { button: "right" });
  await menu.getByRole("menuitem", { name: /^Show the whole route/ }).waitFor();
});

test("F2 and a double click make the tag a field: Enter keeps, Escape gives up, Tab goes on to the next", async () => {
  const [first = "", second = ""] = opened.session.route().pole.keys();
  const tag = (id: string): string | undefined => opened.session.route().pole.get(id)?.tag;
  const former = tag(first);
  await zoomOn(first, 5);
  await chooseOn(first);
  const field = page.getByLabel("Pole tag");
  await page.keyboard.press("F2");
  await field.fill("Q-1");
  await page.keyboard.press("Escape");
  await field.waitFor({ state: "detached" });
  expect(tag(first)).toBe(former);
  await page.keyboard.press("F2");
  await field.fill("Q-1");
  await page.keyboard.press("Tab");
  await expect.poll(() => tag(first)).toBe("Q-1");
  await expect.poll(() => field.inputValue()).toBe(tag(second));
  await field.fill("Q-2");
  await page.keyboard.press("Enter");
  await expect.poll(() => tag(second)).toBe("Q-2");
  const { x, y } = await pointOf(page, first);
  await page.mouse.dblclick(x, y);
  await field.waitFor();
  expect(await field.inputValue()).toBe("Q-1");
});

test("locked terminals do not move and say why; hidden poles are neither seen nor chosen", async () => {
  const id = lonelyTerminal();
  const before = terminal(id);
  await zoomOn(id, 6);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("k");
  const kinds = page.getByRole("region", { name: "Kinds on the diagram" });
  const row = kinds.getByRole("row", { name: /^Poles/ });
  expect(await row.textContent()).toContain(String(opened.session.route().pole.size));
  await kinds.getByLabel("Lock terminals").check();
  await kinds.getByRole("button", { name: "Close" }).click();
  await carry(id, 4);
  await page.mouse.up();
  await expect.poll(() => page.locator(".said").textContent()).toBe("Terminals are locked; unlock them under Kinds.");
  expect(terminal(id)).toEqual(before);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("k");
  await kinds.getByLabel("Show poles").selectOption("hidden");
  const poles = opened.session.route().pole;
  await expect.poll(async () => (await visibleIds(page)).filter((one) => poles.has(one))).toEqual([]);
  await page.keyboard.press("Control+a");
  expect((await selection(page)).filter((one) => poles.has(one))).toEqual([]);
  expect((await selection(page)).length).toBeGreaterThan(10);
});

test("the measure tells straight and along the strand between poles, a running total, and Escape ends it", async () => {
  const { plant } = opened.session;
  const { spanId } = terminal(lonelyTerminal());
  const { fromPoleId, toPoleId, lengthM } = plant.rowOf("span", spanId);
  await zoomOn(fromPoleId, 4);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("m");
  for (const id of [fromPoleId, toPoleId, fromPoleId]) {
    const { x, y } = await pointOf(page, id);
    await page.mouse.click(x, y);
  }
  const card = page.getByRole("region", { name: "Measure" });
  const feet = (text: string): number => {
    const [, whole = "0", inches = "0"] = /(\d+) ft (\d+) in/.exec(text) ?? [];
    return Number(whole) + Number(inches) / 12;
  };
  const cells = await card.getByRole("row").nth(1).getByRole("cell").allTextContents();
  expect(feet(cells[1] ?? "") * 0.3048).toBeCloseTo(lengthM, 1);
  expect(cells[2]).toMatch(/^\d+\.\d°$/);
  const total = await card.getByRole("row").last().getByRole("cell").allTextContents();
  expect(feet(total[1] ?? "") * 0.3048).toBeCloseTo(2 * lengthM, 1);
  await page.keyboard.press("Escape");
  await card.waitFor({ state: "detached" });
});

test("Mod+D hangs another terminal like the chosen one at the far pole", async () => {
  const id = lonelyTerminal();
  const count = opened.session.route().terminal.size;
  await zoomOn(id, 6);
  await chooseOn(id);
  await page.keyboard.press("Control+d");
  await expect.poll(() => opened.session.route().terminal.size).toBe(count + 1);
  const [chosen = ""] = await selection(page);
  expect(chosen).not.toBe(id);
  expect(terminal(chosen)).toMatchObject({ terminalModelId: terminal(id).terminalModelId });
});

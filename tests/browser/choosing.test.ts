import { expect, test } from "vitest";
import { pointOf, scale, selection, visibleIds } from "./diagram.ts";
import { carry, chooseOn, lonelyTerminal, terminalOf, zoomOn } from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

test("a dragged box takes what it encloses, with Alt what it touches; Mod+A takes all that is shown", async () => {
  const { page, session } = opened();
  const { spanId } = terminalOf(opened(), lonelyTerminal(opened()));
  const { fromPoleId, toPoleId } = session.plant.rowOf("span", spanId);
  await zoomOn(page, fromPoleId, 5);
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
  await page.mouse.click(to.x, to.y);
  await page.keyboard.down("Shift");
  await page.keyboard.down("Control");
  await page.keyboard.down("Alt");
  await box();
  for (const key of ["Alt", "Control", "Shift"]) await page.keyboard.up(key);
  expect(await selection(page)).toEqual([toPoleId, spanId]);
  await page.keyboard.press("Control+a");
  const { pole, terminal: terminals, livingUnit } = session.route();
  expect(await selection(page)).toEqual(
    expect.arrayContaining([...pole.keys(), ...terminals.keys(), ...livingUnit.keys()]),
  );
});

test("a click chooses, Shift adds and takes away again, Alt goes through what lies on each other, Escape clears", async () => {
  const { page, session } = opened();
  const id = lonelyTerminal(opened());
  const { spanId } = terminalOf(opened(), id);
  const { fromPoleId } = session.plant.rowOf("span", spanId);
  await zoomOn(page, id, 6);
  const pole = await pointOf(page, fromPoleId);
  await chooseOn(page, id);
  await page.keyboard.down("Shift");
  await page.mouse.click(pole.x, pole.y);
  expect(await selection(page)).toEqual([id, fromPoleId]);
  await page.mouse.click(pole.x, pole.y);
  await page.keyboard.up("Shift");
  expect(await selection(page)).toEqual([id]);
  await page.keyboard.press("Escape");
  expect(await selection(page)).toEqual([]);
  const passed: string[] = [];
  await page.keyboard.down("Alt");
  for (let count = 0; count < 3; count += 1) {
    await page.mouse.click(pole.x, pole.y);
    passed.push(...(await selection(page)));
  }
  await page.keyboard.up("Alt");
  expect(passed).toHaveLength(3);
  expect(passed[0]).toBe(fromPoleId);
  expect(session.route().span.has(passed[1] ?? "")).toBe(true);
  expect(new Set(passed).size).toBeGreaterThan(1);
});

test("2 shows what is chosen, 1 is the named scale, and a reload comes back to the same view", async () => {
  const { page } = opened();
  const id = lonelyTerminal(opened());
  await zoomOn(page, id, 5);
  await chooseOn(page, id);
  await page.keyboard.press("1");
  await expect.poll(() => scale(page)).toBeCloseTo(1, 6);
  await page.keyboard.press("2");
  await expect.poll(() => scale(page)).toBeGreaterThan(1);
  expect(await visibleIds(page)).toContain(id);
  const [before, point] = [await scale(page), await pointOf(page, id)];
  await page.reload();
  await page.locator("canvas").first().waitFor();
  await expect.poll(() => scale(page)).toBeCloseTo(before, 6);
  await expect.poll(async () => (await pointOf(page, id)).x).toBeCloseTo(point.x, 3);
});

test("locked terminals do not move and say why; hidden poles are neither seen nor chosen", async () => {
  const { page, session } = opened();
  const id = lonelyTerminal(opened());
  const before = terminalOf(opened(), id);
  await zoomOn(page, id, 6);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("k");
  const kinds = page.getByRole("region", { name: "Kinds on the diagram" });
  const row = kinds.getByRole("row", { name: /^Poles/ });
  expect(await row.textContent()).toContain(String(session.route().pole.size));
  await kinds.getByLabel("Lock terminals").check();
  await kinds.getByRole("button", { name: "Close" }).click();
  await carry(opened(), id, 4);
  await page.mouse.up();
  await expect.poll(() => page.locator(".said").textContent()).toBe("Terminals are locked; unlock them under Kinds.");
  expect(terminalOf(opened(), id)).toEqual(before);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("k");
  await kinds.getByLabel("Show poles").selectOption("hidden");
  const poles = session.route().pole;
  await expect.poll(async () => (await visibleIds(page)).filter((one) => poles.has(one))).toEqual([]);
  await page.keyboard.press("Control+a");
  expect((await selection(page)).filter((one) => poles.has(one))).toEqual([]);
  expect((await selection(page)).length).toBeGreaterThan(10);
  // nor walked to
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await page.keyboard.press("ArrowRight");
  expect(await selection(page)).toEqual([]);
});

test("a locked pole does not follow the hand and says why; a faded kind is still chosen", async () => {
  const { page, session } = opened();
  const { spanId } = terminalOf(opened(), lonelyTerminal(opened()));
  const poleId = session.plant.rowOf("span", spanId).toPoleId;
  const before = session.route().pole.get(poleId);
  await zoomOn(page, poleId, 6);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("k");
  const kinds = page.getByRole("region", { name: "Kinds on the diagram" });
  await kinds.getByLabel("Lock poles").check();
  await kinds.getByLabel("Show poles").selectOption("faded");
  await kinds.getByRole("button", { name: "Close" }).click();
  await chooseOn(page, poleId);
  const { x, y } = await pointOf(page, poleId);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 20, y + 20, { steps: 4 });
  await page.mouse.up();
  const said = page.locator(".said");
  await expect.poll(() => said.textContent()).toBe("Poles are locked; unlock them under Kinds.");
  await page.keyboard.press("Delete");
  expect(session.route().pole.get(poleId)).toEqual(before);
});

test("the measure tells straight and along the strand between poles, a running total, and Escape ends it", async () => {
  const { page, session } = opened();
  const { plant } = session;
  const { spanId } = terminalOf(opened(), lonelyTerminal(opened()));
  const { fromPoleId, toPoleId, lengthM } = plant.rowOf("span", spanId);
  await zoomOn(page, fromPoleId, 4);
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

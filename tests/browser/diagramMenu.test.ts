import { expect, test } from "vitest";
import { pointOf, selection } from "./diagram.ts";
import { chooseOn, lonelyTerminal, terminalOf, zoomOn } from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

test("the menu of a terminal, by the right button and by Shift+F10, offers the same actions as elsewhere", async () => {
  const { page } = opened();
  const id = lonelyTerminal(opened());
  await zoomOn(page, id, 6);
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
  await expect.poll(() => terminalOf(opened(), id).name).toBe("T-right");
});

test("the menu of empty ground and of a span offers what can be done there", async () => {
  const { page } = opened();
  const { spanId } = terminalOf(opened(), lonelyTerminal(opened()));
  await zoomOn(page, spanId, 5);
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
  const { page, session } = opened();
  const [first = "", second = ""] = session.route().pole.keys();
  const tag = (id: string): string | undefined => session.route().pole.get(id)?.tag;
  const former = tag(first);
  await zoomOn(page, first, 5);
  await chooseOn(page, first);
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
  await field.waitFor({ state: "detached" });
  const { x, y } = await pointOf(page, first);
  await page.mouse.dblclick(x, y);
  await field.waitFor();
  expect(await field.inputValue()).toBe("Q-1");
});

test("Delete takes what is chosen with what hangs on it, without a question, and the message offers the way back", async () => {
  const { page, session } = opened();
  const { spanId } = terminalOf(opened(), lonelyTerminal(opened()));
  const poleId = session.plant.rowOf("span", spanId).toPoleId;
  const before = session.route();
  await zoomOn(page, poleId, 5);
  await chooseOn(page, poleId);
  await page.keyboard.press("Delete");
  const toast = page.locator(".toast");
  await toast.waitFor();
  expect(await toast.textContent()).toMatch(/^Removed pole \S+, with .*\d+ spans?/);
  expect(await page.getByRole("dialog").count()).toBe(0);
  expect(session.route().pole.has(poleId)).toBe(false);
  await toast.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => session.route().pole.has(poleId)).toBe(true);
  expect(session.route()).toEqual(before);
});

test("Mod+D hangs another terminal like the chosen one at the far pole", async () => {
  const { page, session } = opened();
  const id = lonelyTerminal(opened());
  const count = session.route().terminal.size;
  await zoomOn(page, id, 6);
  await chooseOn(page, id);
  await page.keyboard.press("Control+d");
  await expect.poll(() => session.route().terminal.size).toBe(count + 1);
  await expect.poll(() => selection(page)).not.toEqual([id]);
  const [chosen = ""] = await selection(page);
  expect(terminalOf(opened(), chosen)).toMatchObject({ terminalModelId: terminalOf(opened(), id).terminalModelId });
});

test("fast hands: Delete pressed before Mod+D is answered takes the new terminal, never the old one", async () => {
  const { page, session } = opened();
  const id = lonelyTerminal(opened());
  const before = session.route().terminal;
  await zoomOn(page, id, 6);
  await chooseOn(page, id);
  await page.keyboard.press("Control+d");
  await page.keyboard.press("Delete");
  await page.locator(".toast").waitFor();
  expect(session.route().terminal).toEqual(before);
});

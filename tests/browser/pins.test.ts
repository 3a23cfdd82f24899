import { expect, test } from "vitest";
import { openPlant } from "../../core/plant/plant.ts";
import { terminalPlace } from "../../core/plant/terminalView.ts";
import { pointOf } from "./diagram.ts";
import { chooseOn, zoomOn } from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

test("a terminal, a living unit and a pole are decided by key and by mouse, a new layout keeps to it, and undo lets go", async () => {
  const { page, session } = opened();
  const [terminal] = session.route().terminal.values();
  if (!terminal) throw new Error("the demo has no terminal");
  const poleId = terminalPlace(session.plant, terminal.id).poleId;
  const drop = [...session.route().drop.values()].find((one) => one.terminalId !== terminal.id);
  if (!drop) throw new Error("the demo has no other drop");

  await page.keyboard.press("Control+k");
  await page.keyboard.type(`Terminal ${terminal.name}`);
  await page.getByRole("dialog").getByRole("option").first().waitFor();
  await page.keyboard.press("Enter");
  await page.locator("[data-diagram]").focus();
  await zoomOn(page, terminal.id, 2);
  await page.keyboard.press("i");
  await expect.poll(() => session.route().terminal.get(terminal.id)?.pinned).toBe(true);
  await page
    .getByRole("status")
    .filter({ hasText: `Pin terminal ${terminal.name} for every layout` })
    .waitFor();
  await page.getByText("by a person; no layout moves it").waitFor();

  await chooseOn(page, poleId);
  await page.keyboard.press("n");
  await expect.poll(() => session.route().pole.get(poleId)?.terminalAllowed).toBe(false);

  await page.keyboard.press("Control+k");
  await page.keyboard.type(session.route().livingUnit.get(drop.livingUnitId)?.address ?? "");
  await page.getByRole("dialog").getByRole("option").first().waitFor();
  await page.keyboard.press("Enter");
  await expect.poll(() => page.evaluate(() => window.__view?.selection())).toEqual([drop.livingUnitId]);
  const house = await pointOf(page, drop.livingUnitId);
  await page.mouse.click(house.x, house.y, { button: "right" });
  await page.getByRole("menuitem", { name: /^Pin .* for every layout/ }).click();
  await expect.poll(() => session.route().drop.get(drop.id)?.pinned).toBe(true);

  await page.keyboard.press("Control+l");
  const panel = page.getByRole("complementary", { name: "Layout" });
  await panel.getByRole("button", { name: "Choose all: Pinned terminals, 1" }).waitFor();
  await panel.getByRole("button", { name: "Choose all: Poles where nothing may hang, 1" }).click();
  await expect.poll(() => page.evaluate(() => window.__view?.selection())).toEqual([poleId]);

  await panel.getByRole("button", { name: "Lay out terminals" }).click();
  await page.getByRole("status").filter({ hasText: "Laid out" }).waitFor();
  const plant = openPlant(session.route());
  expect(session.route().terminal.get(terminal.id)).toMatchObject({ offsetM: terminal.offsetM, pinned: true });
  expect(session.route().drop.get(drop.id)).toMatchObject({ terminalId: drop.terminalId, port: drop.port });
  const there = [...session.route().terminal.keys()].filter((id) => terminalPlace(plant, id).poleId === poleId);
  expect(there).toEqual([terminal.id]);

  await page.locator("[data-diagram]").focus();
  while (session.history().undo?.startsWith("Set guys") === false) {
    const step = session.history().undo;
    await page.keyboard.press("Control+z");
    await expect.poll(() => session.history().undo).not.toBe(step);
  }
  expect(session.route().terminal.get(terminal.id)?.pinned).toBe(false);
  expect(session.route().pole.get(poleId)?.terminalAllowed).toBe(true);
  expect(session.route().drop.get(drop.id)?.pinned).toBe(false);
  await panel.getByRole("button", { name: "Choose all: Pinned terminals, 0" }).waitFor();
});

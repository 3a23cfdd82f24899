import { expect, test } from "vitest";
import { openPlant } from "../../core/plant/plant.ts";
import { terminalPlace } from "../../core/plant/terminalView.ts";
import { selection } from "./diagram.ts";
import { chooseTogether } from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import type { OpenWindow } from "./openWindow.ts";

const { opened } = eachOnDemo();

const panelOf = ({ page }: OpenWindow) => page.getByRole("complementary", { name: "What if" });

/** Opens the panel by key and asks for a drop reach, by key alone. */
async function tryReach(window: OpenWindow, reach: string): Promise<void> {
  const { page } = window;
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("w");
  const field = panelOf(window).getByLabel("Drop reach");
  await field.fill(reach);
  await field.press("Enter");
  const button = panelOf(window).getByRole("button", { name: "Try it" });
  await button.focus();
  await page.keyboard.press("Enter");
  await panelOf(window).getByRole("table", { name: "Both layouts" }).waitFor();
}

const cellOf = (window: OpenWindow, figure: string, column: number) =>
  panelOf(window)
    .getByRole("row", { name: new RegExp(`^${figure} `) })
    .getByRole("cell")
    .nth(column)
    .textContent();

test("a shorter reach is tried by keyboard, told beside the present layout, and taken whole; undo takes it back", async () => {
  const { page, session } = opened();
  const before = session.route();
  await tryReach(opened(), "230 ft");
  expect(session.route()).toBe(before);
  expect(await cellOf(opened(), "Terminals", 0)).toBe(String(before.terminal.size));
  expect(Number.parseInt((await cellOf(opened(), "Longest drop", 1)) ?? "", 10)).toBeLessThanOrEqual(230);
  expect(await cellOf(opened(), "Gap", 1)).toBe("proven the cheapest");
  await panelOf(opened())
    .getByText(/^1 not served: No pole side/)
    .waitFor();
  const take = panelOf(opened()).getByRole("button", { name: "Take the other layout" });
  await take.focus();
  await page.keyboard.press("Enter");
  await page.getByRole("status").filter({ hasText: "Take the other layout" }).waitFor();
  await expect.poll(() => session.plant.settings().dropReachM).toBeCloseTo(70.104, 6);
  await page.keyboard.press("Escape");
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().terminal.size).toBe(before.terminal.size);
  expect(session.route()).toEqual(before);
});

test("whom a run that was taken leaves without a port is told at once, and listed with the reason", async () => {
  const { page, session } = opened();
  const [before, { size }] = [session.route(), session.route().drop];
  await tryReach(opened(), "150 ft");
  const idOf = (tag: string) => [...before.pole.values()].find((one) => one.tag === tag)?.id ?? "";
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("0");
  await chooseTogether(page, [idOf("M-02"), idOf("M-06")]);
  await panelOf(opened()).getByRole("button", { name: "Take it along M-02 to M-06, 5 poles" }).click();
  await expect.poll(() => session.route().drop.size).toBeLessThan(size);
  const lost = session.route().unservedUnit.size - before.unservedUnit.size;
  await page
    .getByRole("status")
    .filter({ hasText: `Taken; ${lost} more living units are not served` })
    .waitFor();
  await page.keyboard.press("Control+l");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  const list = page.getByRole("list", { name: "Living units that are not served" });
  await list
    .getByText(/^Cable Main has \d+ fibers/)
    .first()
    .waitFor();
});

test("a run of poles chosen by mouse takes the other layout there alone, and a trial that is past says so", async () => {
  const { page, session } = opened();
  const before = session.route();
  const terminalsAt = (tags: readonly string[]) => {
    const plant = openPlant(session.route());
    const tagOf = (id: string) => plant.rowOf("pole", terminalPlace(plant, id).poleId).tag;
    return [...session.route().terminal.keys()].filter((id) => tags.includes(tagOf(id))).length;
  };
  const beyond = [...before.pole.values()].map((one) => one.tag).filter((tag) => !/^M-0[2-6]$/.test(tag));
  const outside = terminalsAt(beyond);
  await page.locator("[data-diagram]").focus();
  await tryReach(opened(), "230 ft");
  const panel = panelOf(opened());
  const idOf = (tag: string) => [...before.pole.values()].find((one) => one.tag === tag)?.id ?? "";
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("0");
  await chooseTogether(page, [idOf("M-02"), idOf("M-06")]);
  await panel.getByRole("button", { name: "Take it along M-02 to M-06, 5 poles" }).click();
  await page.getByRole("status").filter({ hasText: "Take the other layout along 5 poles" }).waitFor();
  expect(session.plant.settings().dropReachM).toBe(before.settings.get("settings")?.dropReachM);
  expect(terminalsAt(beyond)).toBeGreaterThanOrEqual(outside - 2);
  expect(session.route().drop.size).toBe(before.drop.size);
  await panel.getByRole("button", { name: "Try it" }).click();
  await panel.getByRole("table", { name: "Both layouts" }).waitFor();
  await page.getByRole("button", { name: /^Switch to metric/ }).click();
  await panel.getByText("The route was changed since this was tried.").waitFor();
  expect(await panel.getByRole("button", { name: "Take the other layout" }).isDisabled()).toBe(true);
});

test("a trial is shown on the diagram by keyboard, counted and chosen by its signs, and gone when it is switched off or past", async () => {
  const { page, session } = opened();
  const before = session.route();
  await tryReach(opened(), "200 ft");
  const panel = panelOf(opened());
  const canvas = page.locator("[data-diagram] canvas").nth(1);
  const picture = () => canvas.evaluate((one) => (one instanceof HTMLCanvasElement ? one.toDataURL() : ""));
  const plain = await picture();
  const box = panel.getByLabel("Show it on the diagram");
  await box.focus();
  await page.keyboard.press("Space");
  const legend = panel.getByRole("list", { name: "What the other layout has otherwise" });
  await legend.waitFor();
  await expect.poll(picture).not.toBe(plain);
  const count = async (name: string) =>
    Number.parseInt((await legend.getByRole("button", { name: new RegExp(`^${name}`) }).textContent()) ?? "", 10);
  const [hung, gone] = [await count("Hang anew"), await count("Go")];
  const [now, then] = [await cellOf(opened(), "Terminals", 0), await cellOf(opened(), "Terminals", 1)];
  expect(hung - gone).toBe(Number(then) - Number(now));
  await box.press("Space");
  await expect.poll(picture).toBe(plain);
  expect(await legend.count()).toBe(0);
  await box.press("Space");
  await legend.getByRole("button", { name: /^Go/ }).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => selection(page)).toHaveLength(gone);
  expect((await selection(page)).every((id) => before.terminal.has(id))).toBe(true);
  expect(session.route()).toBe(before);
  await page.getByRole("button", { name: /^Switch to metric/ }).click();
  await panel.getByText("The route was changed since this was tried.").waitFor();
  await expect.poll(() => legend.count()).toBe(0);
});

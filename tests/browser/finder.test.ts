import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { actions } from "../../renderer/app/actions.ts";
import { shownKey } from "../../renderer/app/keys.ts";
import { selection, visibleIds } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened, openEmpty } = eachOnDemo();

const field = () => opened().page.getByRole("dialog").getByRole("combobox");
const first = () => opened().page.getByRole("dialog").getByRole("option").first();

test("an address typed with a slip is first, and Enter chooses and shows it", async () => {
  const { page, session } = opened();
  const [unit] = session.route().livingUnit.values();
  if (!unit) throw new Error("the demo route has no living unit");
  const letters = [...unit.address];
  const at = letters.findLastIndex((letter) => /[a-z]/.test(letter)) - 1;
  const slipped = [...letters.slice(0, at), ...letters.slice(at + 1)].join("");
  await page.keyboard.press("Control+k");
  await page.keyboard.type(slipped);
  await expect.poll(() => first().textContent()).toContain(unit.address);
  await page.keyboard.press("Enter");
  expect(await page.getByRole("dialog").count()).toBe(0);
  expect(await selection(page)).toEqual([unit.id]);
  expect(await visibleIds(page)).toContain(unit.id);
});

test("what is typed behind its key while an edit is being answered is sought, and asks nothing of the diagram", async () => {
  const { page, session } = opened();
  const [terminal] = session.route().terminal.values();
  const [unit] = [...session.route().livingUnit.values()].slice(-1);
  if (!terminal || !unit) throw new Error("the demo route has no terminal or no living unit");
  await page.keyboard.press("Control+k");
  await page.keyboard.type(`Terminal ${terminal.name}`);
  await page.keyboard.press("Enter");
  await expect.poll(() => selection(page)).toEqual([terminal.id]);
  await page.locator("[data-diagram]").focus();

  let answer = (): void => {};
  const mayAnswer = new Promise<void>((resolve) => {
    answer = resolve;
  });
  await page.route("**/call/edit.run", async (route) => {
    await mayAnswer;
    await route.continue();
  });
  await page.keyboard.press("i");
  await page.keyboard.press("Control+k");
  await page.keyboard.type(unit.address);
  expect(await field().inputValue()).toBe(unit.address);
  answer();
  await expect.poll(() => session.route().terminal.get(terminal.id)?.pinned).toBe(true);
  await page.keyboard.press("Enter");
  await expect.poll(() => selection(page)).toEqual([unit.id]);
  expect(session.history().undo).toMatch(/^Pin terminal/);
});

test("what was last gone to comes first when the finder is opened again", async () => {
  const { page, session } = opened();
  const [terminal] = [...session.route().terminal.values()].slice(-1);
  await page.keyboard.press("Control+f");
  await page.keyboard.type(terminal?.name ?? "");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Control+k");
  expect(await first().textContent()).toContain(terminal?.name);
});

test("every action is listed with its key, and one that cannot run says why", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+k");
  await first().waitFor();
  for (const { id, keys } of actions) {
    const line = page.locator(`[data-offer="action/${id}"]`);
    expect(await line.count(), id).toBe(1);
    const [key] = keys;
    if (key !== undefined) expect(await line.textContent()).toContain(shownKey(key, false));
  }
  const redo = page.getByRole("dialog").getByRole("option", { name: /^Action Redo/ });
  expect(await redo.getAttribute("aria-disabled")).toBe("true");
  expect(await redo.textContent()).toContain("Nothing to redo.");
});

test("on a whole route, beside a table and on an empty route, every action that cannot run says why in a sentence", async () => {
  const { page } = opened();
  const empty = await openEmpty();
  const listed = async (on: Page): Promise<number> => {
    await on.keyboard.press("Control+k");
    const lines = on.getByRole("dialog").locator('[data-offer^="action/"]');
    await lines.first().waitFor();
    const told = await lines.evaluateAll((all) =>
      all.map((one) => ({
        id: one.getAttribute("data-offer"),
        isOff: one.getAttribute("aria-disabled") === "true",
        hint: one.querySelector(".offer-hint")?.textContent ?? "",
      })),
    );
    expect(told.map((one) => one.id).sort()).toEqual(actions.map((one) => `action/${one.id}`).sort());
    const off = told.filter((one) => one.isOff);
    for (const { id, hint } of off) expect(hint, `${id}`).toMatch(/^[A-Z].*[.]$/);
    await on.keyboard.press("Escape");
    return off.length;
  };
  try {
    const offOnDemo = await listed(page);
    await page.keyboard.press("Control+g");
    await page.getByRole("grid").waitFor();
    expect(await listed(page)).toBeLessThan(offOnDemo);
    expect(await listed(empty.page)).toBeGreaterThan(0);
  } finally {
    await empty.close();
  }
});

test("Enter on an action that cannot run leaves the finder open, with the reason beside it", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+k");
  await page.keyboard.type("redo");
  await expect.poll(() => first().textContent()).toContain("Redo");
  await page.keyboard.press("Enter");
  expect(await first().textContent()).toContain("Nothing to redo.");
});

test("running an action from the finder does what its button does", async () => {
  const { page } = opened();
  const findings = page.getByRole("region", { name: "Findings" });
  expect(await findings.isVisible()).toBe(true);
  await page.keyboard.press("Control+k");
  await page.keyboard.type("put the findings");
  await page.keyboard.press("Enter");
  await findings.waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Show the findings" }).click();
  await findings.waitFor();
});

test("a port, a help page and a word of the trade are found; Escape gives the focus back", async () => {
  const { page, session } = opened();
  const [terminal] = session.route().terminal.values();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+k");
  await page.keyboard.type(`${terminal?.name} port 3`);
  await expect.poll(() => first().textContent()).toContain("port 3");
  await field().fill("rule book");
  await expect.poll(() => first().textContent()).toContain("Rule book");
  await field().fill("ruling span");
  await expect.poll(() => first().textContent()).toContain("Ruling span");
  await page.keyboard.press("Escape");
  expect(await page.evaluate(() => document.activeElement?.hasAttribute("data-diagram"))).toBe(true);
});

import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { openMoveTrials } from "../../core/edits/moveTrial.ts";
import { terminalsFromHub } from "../../core/layout/terminalOrder.ts";
import { portReading } from "../../core/plant/portReading.ts";
import { portCounts } from "../../core/plant/terminalView.ts";
import type { Session } from "../../electron/host/session.ts";
import { pointOf, selection, visibleIds } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo(async ({ page }) => {
  await page.keyboard.press("Control+u");
  await page.locator(".ports-grid").waitFor();
});

const grid = (page: Page) => page.locator(".ports-grid");
const card = (page: Page) => page.locator("[data-card=move]");
const line = (page: Page, terminalId: string) => page.locator(`[data-terminal="${terminalId}"]`);
const order = ({ plant }: Session) => terminalsFromHub(plant).flatMap((one) => one.terminalIds);

/** Drops that a neighbour within three lines could take, with that neighbour. */
function movable(session: Session, dropCount: number) {
  const ids = order(session);
  for (const [from, terminalId] of ids.entries())
    for (const toId of ids.slice(Math.max(0, from - 3), from + 4)) {
      const own = session.plant.where("drop", "terminalId", terminalId);
      const dropIds = own.filter((id) => openMoveTrials(session.route(), [id])(toId).kind === "possible");
      const block = dropIds.slice(0, dropCount);
      if (block.length === dropCount && openMoveTrials(session.route(), block)(toId).kind === "possible")
        return { terminalId, toId, dropIds: block, steps: ids.indexOf(toId) - from };
    }
  throw new Error("no drop of the demo route can be moved");
}

const portOf = (session: Session, dropId: string) => session.plant.rowOf("drop", dropId);
const cell = (page: Page, session: Session, dropId: string) => {
  const { terminalId, port } = portOf(session, dropId);
  return page.locator(`[id="port-${terminalId}-${port}"]`);
};

/** The list scrolled so that two lines can be seen together. */
async function show(page: Page, session: Session, ...ids: readonly string[]): Promise<void> {
  const at = Math.min(...ids.map((id) => order(session).indexOf(id)));
  await grid(page).evaluate((area, top) => {
    area.scrollTop = top;
  }, at * 30);
  for (const id of ids) await line(page, id).waitFor();
}

async function middle(where: Locator): Promise<{ x: number; y: number }> {
  const box = await where.boundingBox();
  if (!box) throw new Error("it is not on the page");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

describe("the balance", () => {
  test("has a line for every terminal and a cell for every port, with figures that add up", async () => {
    const { page, session } = opened();
    await expect
      .poll(() => grid(page).getAttribute("aria-rowcount"))
      .toBe(
        String(
          session.route().terminal.size +
            terminalsFromHub(session.plant).filter((one) => one.terminalIds.length > 0).length +
            1,
        ),
      );
    const [first = ""] = order(session);
    const { portCount } = session.plant.rowOf("terminalModel", session.plant.rowOf("terminal", first).terminalModelId);
    await expect.poll(() => line(page, first).locator("[data-port]").count()).toBe(portCount);
    const figures = await line(page, first).locator("[role=gridcell].figure").allTextContents();
    expect(figures.slice(1, 5).reduce((sum, one) => sum + Number(one), 0)).toBe(portCount);
    await expect
      .poll(() => line(page, first).locator("[data-port].is-used").count())
      .toBe(session.plant.where("drop", "terminalId", first).length);
  });

  test("a unit dragged to another terminal tells cost, reach, fill and light before it is let go, and is one edit", async () => {
    const { page, session } = opened();
    const { terminalId, toId, dropIds } = movable(session, 1);
    const [dropId = ""] = dropIds;
    await show(page, session, terminalId, toId);
    const before = session.plant.where("drop", "terminalId", toId).length;
    const [from, to] = [await middle(cell(page, session, dropId)), await middle(line(page, toId))];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
    await page.mouse.move(to.x, to.y, { steps: 4 });
    await expect
      .poll(() => card(page).textContent())
      .toMatch(/To T-.*(more|less|same).*longest .* reach.*used.*light margin .* dB/);
    expect(portOf(session, dropId).terminalId).toBe(terminalId);
    await page.mouse.up();
    await expect.poll(() => portOf(session, dropId).terminalId).toBe(toId);
    await expect.poll(() => line(page, toId).locator("[data-port].is-used").count()).toBe(before + 1);
    await page.keyboard.press("Control+z");
    await expect.poll(() => portOf(session, dropId).terminalId).toBe(terminalId);
  });

  test("a list that is longer than its place rolls on while a unit is held at its edge", async () => {
    const { page, session } = opened();
    const from = await middle(
      line(page, order(session)[0] ?? "")
        .locator(".is-used")
        .first(),
    );
    const box = await grid(page).boundingBox();
    if (!box) throw new Error("the list is not on the page");
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, box.y + box.height - 8, { steps: 5 });
    const last = order(session).at(-1) ?? "";
    await line(page, last).waitFor();
    await expect.poll(() => card(page).textContent()).toContain("beyond the drop reach");
    await page.mouse.up();
    await expect.poll(() => card(page).count()).toBe(0);
    expect(session.history().undo ?? "").not.toMatch(/^Move/);
  });

  test("a block marked by clicks goes together by keys, in one edit", async () => {
    const { page, session } = opened();
    const { terminalId, toId, dropIds, steps } = movable(session, 2);
    await show(page, session, terminalId, toId);
    for (const id of dropIds) await cell(page, session, id).click({ modifiers: ["Control"] });
    await expect.poll(() => page.locator(".port-cell.is-marked").count()).toBe(2);
    await page.keyboard.press("Enter");
    for (let step = 0; step < Math.abs(steps); step += 1)
      await page.keyboard.press(steps > 0 ? "ArrowDown" : "ArrowUp");
    await expect.poll(() => card(page).textContent()).toContain("2 units in the hand");
    await page.keyboard.press("Enter");
    await expect.poll(() => dropIds.map((id) => portOf(session, id).terminalId)).toEqual([toId, toId]);
    await page.keyboard.press("Control+z");
    await expect.poll(() => dropIds.map((id) => portOf(session, id).terminalId)).toEqual([terminalId, terminalId]);
  });

  test("a terminal beyond reach refuses with the reason, and Escape puts the unit back", async () => {
    const { page, session } = opened();
    const undoBefore = session.history().undo;
    await grid(page).focus();
    await page.keyboard.press("Home");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Control+End");
    await expect.poll(() => card(page).textContent()).toMatch(/beyond the drop reach of .* of .* reach/);
    await page.keyboard.press("Enter");
    await expect.poll(() => card(page).count()).toBe(1);
    await page.keyboard.press("Escape");
    await expect.poll(() => card(page).count()).toBe(0);
    expect(session.history().undo).toEqual(undoBefore);
  });

  test("plus reserves a port and minus gives it free, the field says for whom, undo takes it back", async () => {
    const { page, session } = opened();
    const [first = ""] = order(session);
    const reserved = () => session.plant.rowOf("terminal", first);
    await grid(page).focus();
    await page.keyboard.press("Control+Home");
    await page.keyboard.press("+");
    await expect.poll(() => reserved().reservedPortCount).toBe(1);
    await expect.poll(() => line(page, first).locator(".port-cell.is-reserved").count()).toBe(1);
    await page.getByLabel("for", { exact: true }).fill("vacant lot");
    await page.keyboard.press("Enter");
    await expect.poll(() => reserved().reservedFor).toBe("vacant lot");
    await grid(page).focus();
    await page.keyboard.press("-");
    await expect.poll(() => reserved().reservedPortCount).toBe(0);
    for (let step = 0; step < 3; step += 1) await page.keyboard.press("Control+z");
    await expect.poll(() => [reserved().reservedPortCount, reserved().reservedFor]).toEqual([0, ""]);
  });

  test("evening out says what it would come to and is one edit", async () => {
    const { page, session } = opened();
    // the layout leaves nothing to even out: drops are heaped on one terminal first
    const { toId, dropIds } = movable(session, 2);
    expect(session.run("drops.move", { dropIds, terminalId: toId }).ok).toBe(true);
    await page.reload();
    await page.locator("canvas").first().waitFor();
    await page.keyboard.press("Control+u");
    const before = [...session.route().drop.values()].map((one) => one.terminalId);
    await page.getByRole("button", { name: "Even out" }).click();
    const form = page.locator("form.balance-foot");
    await expect
      .poll(() => form.locator("output").textContent())
      .toMatch(/drops? between .* terminals, .*fill .* % becomes .* %/);
    await form.getByRole("button", { name: "Even out" }).click();
    await expect.poll(() => [...session.route().drop.values()].map((one) => one.terminalId)).not.toEqual(before);
    await expect.poll(() => session.history().undo).toMatch(/Even out/);
  });

  test("fibers stand tube by tube with letters, hub outputs leg by leg", async () => {
    const { page, session } = opened();
    await page.getByRole("tab", { name: "Fibers by tube" }).click();
    const [cable] = session.route().cable.values();
    const { fiberCount } = session.plant.rowOf("cableType", cable?.cableTypeId ?? "");
    const section = page.getByRole("region", { name: new RegExp(`Cable ${cable?.name}`) });
    await expect.poll(() => section.locator(".fiber-cell").count()).toBe(fiberCount);
    await page.getByRole("tab", { name: "Hub outputs by leg" }).click();
    const legs = [...session.route().feed.values()].reduce((sum, one) => sum + one.hubSplitCount, 0);
    await expect.poll(() => page.locator(".leg-list > li").count()).toBe(legs);
  });

  test("a fiber typed for a splitter goes on from the tap that has it: a chain on one leg of the hub", async () => {
    const { page, session } = opened();
    const { plant } = session;
    const portCount = (id: string) =>
      plant.rowOf("terminalModel", plant.rowOf("terminal", id).terminalModelId).portCount;
    const ids = order(session);
    const tapId = ids.find((id, at) => portCount(id) === 4 && cableOf(id) === cableOf(ids[at + 1])) ?? "";
    const farId = ids[ids.indexOf(tapId) + 1] ?? "";
    function cableOf(id: string | undefined): string | undefined {
      return id === undefined ? undefined : plant.rowOf("terminal", id).cableId;
    }
    expect(session.run("settings.set", { values: { deadLength: "reused" } }).ok).toBe(true);
    const tapped = session.run("terminal.resize", { terminalId: tapId, terminalModelId: "terminal-4-tap-10" });
    expect(tapped.ok).toBe(true);
    const fiberAt = (id: string) => {
      const [useId = ""] = plant.where("fiberUse", "terminalId", id);
      return plant.rowOf("fiberUse", useId).fiber;
    };
    await page.reload();
    await page.locator("canvas").first().waitFor();
    await page.keyboard.press("Control+u");
    await show(page, session, farId);
    await line(page, farId).locator("[data-port]").first().click();
    const field = page.getByLabel("Fiber to splitter 1");
    await expect.poll(() => field.inputValue()).toBe(String(fiberAt(farId)));
    await field.fill(String(fiberAt(tapId)));
    await page.keyboard.press("Enter");
    await expect.poll(() => fiberAt(farId)).toBe(fiberAt(tapId));
    await page.getByRole("tab", { name: "Hub outputs by leg" }).click();
    const [near, far] = [tapId, farId].map((id) => plant.rowOf("terminal", id).name);
    const leg = page.locator(".leg-list > li", { hasText: `${near}` }).filter({ hasText: `${far}` });
    await expect.poll(() => leg.count()).toBe(1);
  });

  test("the light inks the route and tells every port what a meter should show there", async () => {
    const { page, session } = opened();
    await page.getByRole("tab", { name: "Light by terminal" }).click();
    const list = page.getByRole("listbox");
    await list.focus();
    await page.keyboard.press("Home");
    await page.keyboard.press("ArrowDown");
    const [, second = ""] = order(session);
    const { name } = session.plant.rowOf("terminal", second);
    const sheet = page.getByRole("region", { name: `Light at the ports of ${name}` });
    await sheet.waitFor();
    const { total, used } = portCounts(session.plant, second);
    await expect.poll(() => sheet.locator("tbody tr").count()).toBe(total);
    await expect.poll(() => sheet.locator("tbody .explained").count()).toBe(used);
    const reading = portReading(session.plant, second, 1);
    if (reading.kind === "unknown" || !reading.arrives) throw new Error("the first port has no light");
    const cells = await sheet.locator("tbody tr").first().locator("td").allTextContents();
    expect(cells[2]).toBe(`${reading.least.downDb.toFixed(1)} to ${reading.most.downDb.toFixed(1)}`);
    expect(cells[4]).toBe(`${reading.arrives.leastDbm.toFixed(1)} to ${reading.arrives.mostDbm.toFixed(1)}`);
    expect(await sheet.evaluate((one) => one.scrollWidth - one.clientWidth)).toBe(0);
    await expect.poll(() => selection(page)).toEqual([second]);
    await sheet.locator("tbody .explained").first().click();
    await page.locator(".explanation").getByRole("button", { name: "Worksheet" }).click();
    await page.getByRole("dialog", { name: "Worksheet" }).waitFor();
  });

  test("a house chosen on the diagram has its terminal's light told, and what is over the limit shows", async () => {
    const { page, session } = opened();
    const { plant } = session;
    await page.getByRole("tab", { name: "Light by terminal" }).click();
    await page.getByRole("listbox").focus();
    for (const key of ["Home", "ArrowDown", "ArrowDown"]) await page.keyboard.press(key);
    await page.locator("[data-diagram]").focus();
    await page.keyboard.press("2");
    const third = order(session)[2] ?? "";
    const otherOf = (unitId: string): string | null => {
      const [dropId] = plant.where("drop", "livingUnitId", unitId);
      const terminalId = dropId === undefined ? third : plant.rowOf("drop", dropId).terminalId;
      return terminalId === third ? null : terminalId;
    };
    let unitId = "";
    await expect
      .poll(async () => {
        unitId = (await visibleIds(page)).find((id) => session.route().livingUnit.has(id) && otherOf(id)) ?? "";
        return unitId;
      })
      .not.toBe("");
    const { x, y } = await pointOf(page, unitId);
    await page.mouse.click(x, y);
    const terminalId = otherOf(unitId) ?? "";
    const { name } = plant.rowOf("terminal", terminalId);
    await page.getByRole("region", { name: `Light at the ports of ${name}` }).waitFor();
    const chip = page.locator(`[id="light-${terminalId}"] .light-chip`);
    await expect.poll(() => chip.getAttribute("aria-label")).toMatch(/dB/);
    expect(session.run("settings.set", { values: { marginDb: 20 } }).ok).toBe(true);
    await page.reload();
    await page.locator("canvas").first().waitFor();
    await page.keyboard.press("Control+u");
    await page.getByRole("tab", { name: "Light by terminal" }).click();
    const [first = ""] = order(session);
    const firstChip = page.locator(`[id="light-${first}"] .light-chip`);
    await expect.poll(() => firstChip.getAttribute("aria-label")).toBe("over the limit");
  });
});

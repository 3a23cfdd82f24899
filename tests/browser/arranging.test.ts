import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { cablePath, stationM } from "../../core/plant/cablePath.ts";
import { terminalHang } from "../../core/plant/terminalView.ts";
import { selection } from "./diagram.ts";
import { arrowAlong, chooseOn, chooseTogether, lonelyTerminal, terminalOf, zoomOn } from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import type { OpenWindow } from "./openWindow.ts";

const { opened } = eachOnDemo();

const undoName = (): string | null => opened().session.history().undo;

/** The first terminals of the main cable, from its feed end. */
function terminalsAlong({ session }: OpenWindow, count: number): readonly string[] {
  const { plant } = session;
  const [cable] = [...session.route().cable.values()].filter((one) => one.fromClosureId === null);
  const own = [...session.route().terminal.values()].filter((one) => one.cableId === cable?.id);
  const atM = (id: string): number => stationOf(opened(), id);
  return own
    .map((one) => one.id)
    .filter((id) => plant.row("terminal", id))
    .sort((a, b) => atM(a) - atM(b))
    .slice(0, count);
}

function stationOf(window: OpenWindow, id: string): number {
  const { cableId, spanId, offsetM } = terminalOf(window, id);
  return stationM(window.session.plant, cableId, spanId, offsetM) ?? Number.NaN;
}

const card = (page: Page) => page.getByRole("region", { name: "Arrange what is chosen" });

test("five terminals come to hang equally far apart, shown before it is done; one undo takes it back", async () => {
  const { page, session } = opened();
  const ids = terminalsAlong(opened(), 5);
  const before = session.route().terminal;
  await zoomOn(page, ids[2] ?? "", 3);
  await chooseTogether(page, ids);
  await page.keyboard.press("e");
  await expect.poll(() => card(page).locator("output").textContent()).toMatch(/^5 terminals, .* apart$/);
  expect(await page.locator(".arrange-preview rect").count()).toBe(3);
  expect(session.route().terminal).toBe(before);
  await page.keyboard.press("Enter");
  await expect.poll(undoName).toBe("Space 5 terminals evenly");
  const atM = ids.map((id) => stationOf(opened(), id));
  const apartM = atM.slice(1).map((one, i) => one - (atM[i] ?? Number.NaN));
  expect(Math.max(...apartM) - Math.min(...apartM)).toBeLessThan(0.001);
  await card(page).waitFor({ state: "detached" });
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().terminal).toEqual(before);
});

test("terminals come to be filled alike, told before it is done with what it costs; one undo takes it back", async () => {
  const { page, session } = opened();
  const ids = terminalsAlong(opened(), 4);
  for (const dropId of session.plant.where("drop", "terminalId", ids[1] ?? "").slice(0, 4))
    expect(session.run("drop.remove", { dropId }).ok).toBe(true);
  await page.reload();
  await page.locator("canvas").first().waitFor();
  const before = session.route().drop;
  await zoomOn(page, ids[1] ?? "", 3);
  await chooseTogether(page, ids);
  await page.keyboard.press("e");
  await card(page).getByLabel("How").selectOption({ label: "Even out how full terminals are" });
  await expect.poll(() => card(page).locator("output").textContent()).toMatch(/to another terminal.*ports in use/);
  expect(session.route().drop).toBe(before);
  await card(page).getByRole("button", { name: "Arrange" }).click();
  await expect.poll(undoName).toBe("Even out 4 terminals");
  expect(session.route().drop).not.toEqual(before);
  await card(page).waitFor({ state: "detached" });
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().drop).toEqual(before);
});

test("Escape puts the arranging away and nothing has changed", async () => {
  const { page, session } = opened();
  const ids = terminalsAlong(opened(), 3);
  const before = session.route();
  await zoomOn(page, ids[1] ?? "", 4);
  await chooseTogether(page, ids);
  await page.keyboard.press("e");
  await card(page).waitFor();
  await page.keyboard.press("Escape");
  await card(page).waitFor({ state: "detached" });
  expect(session.route()).toBe(before);
  expect(await selection(page)).toEqual(ids);
});

test("a distance typed once is kept by all chosen terminals, and F4 gives it to the next one", async () => {
  const { page } = opened();
  const [first = "", second = "", third = ""] = terminalsAlong(opened(), 3);
  await zoomOn(page, second, 4);
  await chooseTogether(page, [first, second]);
  await page.keyboard.press("e");
  await card(page).getByLabel("How").selectOption("One distance from the pole");
  await card(page).getByRole("textbox", { name: "Distance from the pole" }).fill("4 ft");
  await page.keyboard.press("Enter");
  const fromPoleM = (id: string) => terminalHang(opened().session.plant, id).fromPoleM;
  for (const id of [first, second]) await expect.poll(() => fromPoleM(id)).toBeCloseTo(1.2192, 9);
  await card(page).waitFor({ state: "detached" });
  await chooseTogether(page, [third]);
  await page.keyboard.press("F4");
  await expect.poll(() => fromPoleM(third)).toBeCloseTo(1.2192, 9);
});

test("F turns a terminal to the other side of its pole; turned again it is back", async () => {
  const { page, session } = opened();
  const id = lonelyTerminal(opened());
  const { spanId } = terminalOf(opened(), id);
  const poleId = () => terminalHang(session.plant, id).poleId;
  const before = poleId();
  await zoomOn(page, id, 6);
  await chooseOn(page, id);
  await page.keyboard.press("f");
  await expect.poll(() => terminalOf(opened(), id).spanId).not.toBe(spanId);
  expect(poleId()).toBe(before);
  await page.keyboard.press("f");
  await expect.poll(() => terminalOf(opened(), id).spanId).toBe(spanId);
});

test("a terminal hangs at every other pole of the chosen span's cable, in one step of undo", async () => {
  const { page, session } = opened();
  const before = session.route().terminal;
  const { spanId } = terminalOf(opened(), lonelyTerminal(opened()));
  await zoomOn(page, spanId, 2);
  await chooseOn(page, spanId);
  await page.keyboard.press("Shift+T");
  await card(page).getByLabel("Every how many poles").fill("2");
  await expect.poll(() => card(page).locator("output").textContent()).toMatch(/^\d+ terminals? at \d+ poles/);
  const [, told = ""] = /^(\d+) /.exec((await card(page).locator("output").textContent()) ?? "") ?? [];
  await page.keyboard.press("Enter");
  await expect.poll(() => session.route().terminal.size).toBe(before.size + Number(told));
  await expect.poll(() => selection(page)).toHaveLength(Number(told));
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().terminal).toEqual(before);
});

test("arrows nudge all chosen terminals together and one undo takes them all back", async () => {
  const { page, session } = opened();
  const id = lonelyTerminal(opened());
  const { plant } = session;
  const key = await arrowAlong(opened(), id);
  const other = [...session.route().terminal.keys()].find(
    (one) => one !== id && plant.rowOf("terminal", one).cableId === terminalOf(opened(), id).cableId,
  );
  const ids = [id, other ?? ""];
  await chooseTogether(page, ids);
  const startM = ids.map((one) => stationOf(opened(), one));
  for (let count = 0; count < 4; count += 1) await page.keyboard.press(key);
  await expect.poll(() => Math.abs(stationOf(opened(), id) - (startM[0] ?? 0))).toBeCloseTo(4 * 0.0254, 9);
  expect(undoName()).toBe("Move 2 terminals");
  await page.keyboard.press("Control+z");
  await expect.poll(() => ids.map((one) => stationOf(opened(), one))).toEqual(startM);
});

test("poles moved along their line come to equal spans; their terminals keep their distance from them", async () => {
  const { page, session } = opened();
  const { plant } = session;
  const [cable] = [...session.route().cable.values()].filter((one) => one.fromClosureId === null);
  const spanIds = cablePath(plant, cable?.id ?? "").steps.slice(2, 6);
  const poleIds = [...spanIds.map((one) => one.inPoleId), spanIds.at(-1)?.outPoleId ?? ""];
  const lengthsM = () => spanIds.map((one) => session.route().span.get(one.spanId)?.lengthM ?? Number.NaN);
  const before = lengthsM();
  const distances = () =>
    [...session.route().terminal.keys()].map((id) => Math.round(terminalHang(plant, id).fromPoleM * 1e6));
  const hung = distances();
  await zoomOn(page, poleIds[2] ?? "", 3);
  await chooseTogether(page, poleIds);
  await page.keyboard.press("e");
  await expect.poll(() => card(page).locator("output").textContent()).toMatch(/^5 poles, .* apart$/);
  await page.keyboard.press("Enter");
  await expect.poll(undoName).toBe("Space 5 poles evenly");
  expect(Math.max(...lengthsM()) - Math.min(...lengthsM())).toBeLessThan(0.001);
  expect(distances()).toEqual(hung);
  await page.keyboard.press("Control+z");
  await expect.poll(lengthsM).toEqual(before);
});

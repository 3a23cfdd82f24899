import { expect, test } from "vitest";
import { farPoleId, spansAtPole } from "../../core/plant/geometry.ts";
import { portsOf } from "../../core/plant/terminalView.ts";
import { pointOf } from "./diagram.ts";
import {
  arrowAlong,
  between,
  carry,
  chooseOn,
  lonelyTerminal,
  metreAlong,
  terminalOf,
  zoomOn,
} from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

const undoName = (): string | null => opened().session.history().undo;

test("a terminal dragged near the standard distance snaps to it and one sees by what; with Mod held it does not", async () => {
  const { page, session } = opened();
  const id = lonelyTerminal(opened());
  const { standoffM } = session.plant.settings();
  await zoomOn(page, id, 7);
  await page.keyboard.down("Control");
  await carry(opened(), id, 4);
  const chip = page.locator(".hand-chip");
  expect(await chip.textContent()).toMatch(/from pole \S+/);
  expect(await chip.locator(".hand-snap").count()).toBe(0);
  await page.mouse.up();
  await page.keyboard.up("Control");
  await expect.poll(() => terminalOf(opened(), id).offsetM).toBeGreaterThan(standoffM + 3.5);
  expect(terminalOf(opened(), id).offsetM).toBeLessThan(standoffM + 4.5);
  await chip.waitFor({ state: "detached" });

  const pxPerM = Math.hypot(...(await metreAlong(opened(), id)));
  await carry(opened(), id, standoffM - terminalOf(opened(), id).offsetM + 4 / pxPerM);
  expect(await chip.locator(".hand-snap").textContent()).toBe("standard distance");
  await page.mouse.up();
  await expect.poll(() => terminalOf(opened(), id).offsetM).toBe(standoffM);
  await chip.waitFor({ state: "detached" });
  expect(undoName()).toBe(`Move terminal ${terminalOf(opened(), id).name}`);
});

test("Escape in the middle of a drag leaves the terminal where it was and makes no step", async () => {
  const { page } = opened();
  const id = lonelyTerminal(opened());
  const before = terminalOf(opened(), id);
  const step = undoName();
  await zoomOn(page, id, 7);
  await carry(opened(), id, 5);
  await page.locator(".hand-chip").waitFor();
  await page.keyboard.press("Escape");
  await page.locator(".hand-chip").waitFor({ state: "detached" });
  await page.mouse.move(400, 300, { steps: 3 });
  await page.mouse.up();
  // an edit that is asked for now would come after one the drag had made
  await page.keyboard.press(await arrowAlong(opened(), id));
  await expect.poll(() => terminalOf(opened(), id).offsetM).toBeCloseTo(before.offsetM + 0.0254, 9);
  await page.keyboard.press("Control+z");
  await expect.poll(() => terminalOf(opened(), id)).toEqual(before);
  expect(undoName()).toBe(step);
});

test("a terminal can be dragged onto the neighbouring span of its cable", async () => {
  const { page, session } = opened();
  const id = lonelyTerminal(opened());
  const { plant } = session;
  const { spanId, cableId } = terminalOf(opened(), id);
  const poleId = plant.rowOf("span", spanId).fromPoleId;
  const other = [...plant.where("span", "fromPoleId", poleId), ...plant.where("span", "toPoleId", poleId)].find(
    (one) =>
      one !== spanId &&
      plant.where("cableRun", "spanId", one).some((run) => plant.rowOf("cableRun", run).cableId === cableId),
  );
  if (other === undefined) throw new Error("the terminal hangs at the end of its cable");
  await zoomOn(page, id, 5);
  const [from, to] = [await pointOf(page, id), await pointOf(page, other)];
  const pole = await pointOf(page, poleId);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(pole.x + (to.x - pole.x) * 0.5, pole.y + (to.y - pole.y) * 0.5, { steps: 8 });
  await page.mouse.up();
  await expect.poll(() => terminalOf(opened(), id).spanId).toBe(other);
  await page.keyboard.press("Control+z");
  await expect.poll(() => terminalOf(opened(), id).spanId).toBe(spanId);
});

test("the exact distance can be typed while dragging or after, in any length the trade writes; nonsense changes nothing", async () => {
  const { page } = opened();
  const id = lonelyTerminal(opened());
  await zoomOn(page, id, 7);
  await carry(opened(), id, 3);
  await page.keyboard.type("5 ft");
  const field = page.getByLabel(/^Distance from pole /);
  expect(await field.inputValue()).toBe("5 ft");
  await page.mouse.up();
  await field.press("Enter");
  await expect.poll(() => terminalOf(opened(), id).offsetM).toBe(1.524);
  await field.waitFor({ state: "detached" });

  for (const [text, offsetM] of [
    ["36 in", 0.9144],
    ["0.9 m", 0.9],
    ["3'", 0.9144],
  ] as const) {
    await page.keyboard.press("Enter");
    await field.fill(text);
    await field.press("Enter");
    await expect.poll(() => terminalOf(opened(), id).offsetM).toBe(offsetM);
    await field.waitFor({ state: "detached" });
  }
  await page.keyboard.press("Enter");
  await field.fill("a bit more");
  await field.press("Enter");
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  await page.keyboard.press("Escape");
  await field.waitFor({ state: "detached" });
  expect(terminalOf(opened(), id).offsetM).toBe(0.9144);
});

test("five presses of an arrow nudge a terminal five inches, Shift ten more, and one undo takes them all back", async () => {
  const { page } = opened();
  const id = lonelyTerminal(opened());
  const startM = terminalOf(opened(), id).offsetM;
  await zoomOn(page, id, 7);
  await chooseOn(page, id);
  const key = await arrowAlong(opened(), id);
  for (let count = 0; count < 5; count += 1) await page.keyboard.press(key);
  await page.keyboard.press(`Shift+${key}`);
  await expect.poll(() => terminalOf(opened(), id).offsetM).toBeCloseTo(startM + 15 * 0.0254, 9);
  await page.keyboard.press("Control+z");
  await expect.poll(() => terminalOf(opened(), id).offsetM).toBe(startM);
});

test("a chosen pole is moved by dragging and its spans follow; an unchosen one stays where it was surveyed", async () => {
  const { page, session } = opened();
  const { plant } = session;
  const { spanId } = terminalOf(opened(), lonelyTerminal(opened()));
  const poleId = plant.rowOf("span", spanId).toPoleId;
  await zoomOn(page, poleId, 6);
  const before = plant.rowOf("pole", poleId);
  const lengthM = plant.rowOf("span", spanId).lengthM;
  const drag = async (): Promise<void> => {
    const { x, y } = await pointOf(page, poleId);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 14, y + 12, { steps: 5 });
    await page.mouse.up();
  };
  const at = await pointOf(page, poleId);
  await drag();
  // the ground has moved in its stead
  await expect.poll(async () => (await pointOf(page, poleId)).x).toBeCloseTo(at.x + 14, 6);
  expect(plant.rowOf("pole", poleId)).toEqual(before);
  await chooseOn(page, poleId);
  await drag();
  await expect.poll(() => session.route().pole.get(poleId)?.eastM).not.toBe(before.eastM);
  expect(session.route().span.get(spanId)?.lengthM).not.toBe(lengthM);
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().pole.get(poleId)).toEqual(before);
  expect(session.route().span.get(spanId)?.lengthM).toBe(lengthM);
});

test("a pole dragged near the line of its neighbours stands in it, and one sees so; with Mod held it does not", async () => {
  const { page, session } = opened();
  const { plant } = session;
  const { spanId } = terminalOf(opened(), lonelyTerminal(opened()));
  const poleId = plant.rowOf("span", spanId).toPoleId;
  const [aId = "", bId = "", ...more] = spansAtPole(plant, poleId).map((one) => farPoleId(plant, one, poleId));
  expect(more).toEqual([]);
  await zoomOn(page, poleId, 5);
  await chooseOn(page, poleId);
  const [a, b] = [await pointOf(page, aId), await pointOf(page, bId)];
  const [aside, chip] = [plant.rowOf("pole", poleId), page.locator(".hand-chip")];
  const drag = async (): Promise<void> => {
    const at = await pointOf(page, poleId);
    // a third of the way between them, and a few pixels off their line
    const onLine = between(a, b, 0.36);
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(onLine.x + 2, onLine.y + 3, { steps: 5 });
  };
  await page.keyboard.down("Control");
  await drag();
  expect(await chip.locator(".hand-snap").count()).toBe(0);
  await page.keyboard.press("Escape");
  await page.mouse.up();
  await page.keyboard.up("Control");
  await drag();
  expect(await chip.locator(".hand-snap").textContent()).toMatch(/^in line with \S+ and \S+$/);
  await page.mouse.up();
  await expect.poll(() => session.route().pole.get(poleId)).not.toEqual(aside);
  const [from, to, at] = [aId, bId, poleId].map((id) => plant.rowOf("pole", id));
  if (!from || !to || !at) throw new Error("a pole is gone");
  const lineM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM);
  const offM =
    ((to.eastM - from.eastM) * (at.northM - from.northM) - (to.northM - from.northM) * (at.eastM - from.eastM)) / lineM;
  expect(Math.abs(offM)).toBeLessThan(1e-6);
});

test("a drop's end is dragged to another port; a taken port is refused with the reason and nothing changes", async () => {
  const { page, session } = opened();
  const { plant } = session;
  const found = [...session.route().drop.values()].find(({ terminalId }) => {
    const ports = portsOf(plant, terminalId);
    return ports.some((one) => one.dropIds.length === 0) && ports.filter((one) => one.dropIds.length > 0).length > 1;
  });
  if (!found) throw new Error("the demo route has no terminal with used and spare ports");
  await zoomOn(page, found.livingUnitId, 4);
  await chooseOn(page, found.livingUnitId);
  await zoomOn(page, found.terminalId, 3);
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
  expect(session.route().drop.get(found.id)?.port).toBe(found.port);
  await drag(found.port, spare);
  await page.mouse.up();
  await expect.poll(() => session.route().drop.get(found.id)?.port).toBe(spare);
});

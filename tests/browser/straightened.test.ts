import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { poleStationM } from "../../core/plant/cablePath.ts";
import { formatStation } from "../../core/units/station.ts";
import { pointOf, selection, visibleIds } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo(({ page }) => straighten(page));

async function straighten(page: Page): Promise<void> {
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("r");
  await page.locator(".ruler").waitFor();
}

/** Poles of the main cable in its own order, with their stations. */
function mainPoles() {
  const { plant } = opened().session;
  const [main] = [...opened().session.route().cable.values()].filter((one) => one.fromClosureId === null);
  const cableId = main?.id ?? "";
  const poles = [...opened().session.route().pole.values()].flatMap((pole) => {
    const stationM = poleStationM(plant, cableId, pole.id);
    return stationM === null ? [] : [{ ...pole, stationM }];
  });
  return poles.sort((a, b) => a.stationM - b.stationM);
}

async function middle(page: Page): Promise<{ readonly x: number; readonly y: number }> {
  const box = await page.locator("[data-diagram]").boundingBox();
  if (!box) throw new Error("the diagram is not on the page");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test("the straightened route lays the main cable in one level row, to scale, and shows every pole and house", async () => {
  const { page, session } = opened();
  const poles = mainPoles();
  const points = await Promise.all(poles.map((one) => pointOf(page, one.id)));
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) throw new Error("the main cable has no poles");
  expect(points.filter((one) => Math.abs(one.y - first.y) > 0.01)).toEqual([]);
  const pxPerM = (last.x - first.x) / (poles.at(-1)?.stationM ?? 0);
  const astray = poles.filter((one, i) => Math.abs((points[i]?.x ?? 0) - first.x - one.stationM * pxPerM) > 0.5);
  expect(astray).toEqual([]);
  const shown = new Set(await visibleIds(page));
  const route = session.route();
  expect([...route.pole.keys(), ...route.livingUnit.keys()].filter((id) => !shown.has(id))).toEqual([]);
});

test("evenly spaced, all spans of a row are drawn as long as each other", async () => {
  const { page } = opened();
  await page.getByRole("button", { name: "Space poles evenly" }).click();
  const points = await Promise.all(mainPoles().map((one) => pointOf(page, one.id)));
  const steps = points.slice(1).map((one, i) => one.x - (points[i]?.x ?? 0));
  expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(0.01);
});

test("a click chooses the same terminal straightened as true to the ground", async () => {
  const { page, session } = opened();
  const [terminal] = session.route().terminal.values();
  if (!terminal) throw new Error("the demo route has no terminal");
  for (const state of ["detached", "visible"] as const) {
    const { x, y } = await pointOf(page, terminal.id);
    await page.mouse.click(x, y);
    expect(await selection(page)).toEqual([terminal.id]);
    await page.keyboard.press("r");
    await page.locator(".ruler").waitFor({ state });
  }
});

test("a lateral leaves at its junction: its row begins where that pole stands along the main line", async () => {
  const { page, session } = opened();
  const lateral = [...session.route().cable.values()].find((one) => one.fromClosureId !== null);
  const runs = [...session.route().cableRun.values()].filter((one) => one.cableId === lateral?.id);
  const first = runs.sort((a, b) => a.sequence - b.sequence)[0];
  const span = session.route().span.get(first?.spanId ?? "");
  if (!span || !first) throw new Error("the demo route has no lateral");
  const [junctionId, nextId] = first.reversed ? [span.toPoleId, span.fromPoleId] : [span.fromPoleId, span.toPoleId];
  const [junction, next] = [await pointOf(page, junctionId), await pointOf(page, nextId)];
  const poles = mainPoles();
  const [a, b] = [await pointOf(page, poles[0]?.id ?? ""), await pointOf(page, poles.at(-1)?.id ?? "")];
  const pxPerM = (b.x - a.x) / (poles.at(-1)?.stationM ?? 1);
  expect(next.x - junction.x).toBeCloseTo(span.lengthM * pxPerM, 0);
  expect(Math.abs(next.y - junction.y)).toBeGreaterThan(20);
});

test("the ruler writes each pole's station as the route has it, and a click goes there", async () => {
  const { page } = opened();
  const poles = mainPoles();
  const pole = poles[Math.floor(poles.length / 2)];
  if (!pole) throw new Error("the main cable has no poles");
  const station = formatStation(pole.stationM, "us");
  await page.getByRole("button", { name: `Pole ${pole.tag}, station ${station}` }).click();
  expect(await selection(page)).toEqual([pole.id]);
  const [at, centre] = [await pointOf(page, pole.id), await middle(page)];
  expect(Math.hypot(at.x - centre.x, at.y - centre.y)).toBeLessThan(1);
});

test("a station typed on the ruler puts its pole in the middle, and nonsense is refused in words", async () => {
  const { page } = opened();
  const poles = mainPoles();
  const pole = poles[4];
  if (!pole) throw new Error("the main cable has no fifth pole");
  const field = page.getByRole("textbox", { name: "Station or pole" });
  await field.fill(formatStation(pole.stationM, "us"));
  await field.press("Enter");
  const [at, centre] = [await pointOf(page, pole.id), await middle(page)];
  expect(Math.hypot(at.x - centre.x, at.y - centre.y)).toBeLessThan(1);
  await field.fill("nowhere");
  await field.press("Enter");
  expect(await page.locator(".ruler").getByRole("alert").textContent()).toContain('no station or pole "nowhere"');
  expect(await field.getAttribute("aria-invalid")).toBe("true");
});

test("arrow keys walk along the ruler", async () => {
  const { page } = opened();
  const bar = page.getByRole("toolbar", { name: /^Stations along/ });
  await bar.getByRole("button").first().focus();
  await page.keyboard.press("ArrowRight");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toMatch(/^Pole \S+, station/);
  await page.keyboard.press("Enter");
  expect(await selection(page)).toHaveLength(1);
});

test("a finding leads to its place on the straightened page", async () => {
  const { page, session } = opened();
  const finding = session.findings().find((one) => one.subjects.some((subject) => subject.table === "pole"));
  const pole = finding?.subjects.find((subject) => subject.table === "pole");
  if (!finding || !pole) throw new Error("the demo route has no finding at a pole");
  await page.locator(`[data-finding="${finding.key}"]`).first().click();
  expect(await visibleIds(page)).toContain(pole.id);
});

test("a file is laid out again as it was left", async () => {
  const { page } = opened();
  await page.reload();
  await page.locator(".ruler").waitFor();
  await page.getByRole("button", { name: "Draw true to the ground" }).click();
  await page.locator(".ruler").waitFor({ state: "detached" });
  await page.reload();
  await page.locator("canvas").first().waitFor();
  expect(await page.locator(".ruler").count()).toBe(0);
});

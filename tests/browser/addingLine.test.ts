import { expect, test } from "vitest";
import { cablesInSpan } from "../../core/plant/cablePath.ts";
import { freeSpan, hint, lineEnd, rowsOf, take, undoesInOneStep } from "./addingHands.ts";
import { groundUnder, pointOf, selection, visibleIds } from "./diagram.ts";
import { between } from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened, openEmpty } = eachOnDemo();

test("a pole is set where one clicks on the ground, and one undo takes it back", async () => {
  const { page, session } = opened();
  const before = rowsOf(opened());
  await take(page, "p", "Add a pole");
  expect(await hint(page)).toMatch(/^Click the ground/);
  const ground = await groundUnder(page, 300, 560);
  await page.mouse.click(300, 560);
  await expect.poll(() => session.route().pole.size).toBe(51);
  await expect.poll(() => selection(page)).toHaveLength(1);
  const [id = ""] = await selection(page);
  const pole = session.plant.rowOf("pole", id);
  expect(Math.hypot(pole.eastM - ground.eastM, pole.northM - ground.northM)).toBeLessThan(0.01);
  await undoesInOneStep(opened(), before, /^Undo add pole/);
});

test("a pole clicked onto a span splits it there; joining its spans again takes the pole out", async () => {
  const { page, session } = opened();
  const { span, from, to } = await freeSpan(opened());
  const before = rowsOf(opened());
  const spot = between(from, to, 0.4);
  await take(page, "p", "Add a pole");
  await page.mouse.click(spot.x, spot.y);
  await expect.poll(() => session.route().pole.size).toBe(51);
  expect(session.plant.rowOf("span", span.id).lengthM / span.lengthM).toBeCloseTo(0.4, 1);
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: /^Undo split span/ }).waitFor();
  await page.keyboard.press("j");
  await expect.poll(() => session.route().pole.size).toBe(50);
  expect(session.plant.rowOf("span", span.id).lengthM).toBeCloseTo(span.lengthM, 6);
  await page.getByRole("button", { name: /^Undo remove pole/ }).waitFor();
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.route().pole.size).toBe(51);
  await undoesInOneStep(opened(), before, /^Undo split span/);
});

test("a click after the last pole extends the line with a span that carries strand and cable", async () => {
  const { page, session } = opened();
  const { poleId } = lineEnd(opened());
  const before = rowsOf(opened());
  await take(page, "p", "Add a pole");
  const end = await pointOf(page, poleId);
  await page.mouse.click(end.x, end.y);
  expect(await hint(page)).toMatch(/^Click where the next pole stands/);
  await page.mouse.click(end.x - 12, end.y + 70);
  await expect.poll(() => session.route().span.size).toBe(50);
  const spans = session.plant.where("span", "fromPoleId", poleId).map((id) => session.plant.rowOf("span", id));
  const grown = spans.find((one) => one.origin === "drawn");
  expect(grown?.strandSectionId).not.toBeNull();
  expect(session.plant.where("cableRun", "spanId", grown?.id ?? "")).toHaveLength(1);
  await undoesInOneStep(opened(), before, /^Undo extend the line/);
});

test("the length of the next span can be typed while one points where it goes, and the line goes on from its pole", async () => {
  const { page, session } = opened();
  const { poleId } = lineEnd(opened());
  const before = rowsOf(opened());
  await take(page, "p", "Add a pole");
  const end = await pointOf(page, poleId);
  await page.mouse.click(end.x, end.y);
  await page.mouse.move(end.x, end.y + 60);
  await page.keyboard.type("120 ft");
  expect(await page.getByLabel("Length of the span").inputValue()).toBe("120 ft");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.route().span.size).toBe(50);
  const [grown] = session.plant.where("span", "fromPoleId", poleId).map((id) => session.plant.rowOf("span", id));
  expect(grown?.lengthM).toBeCloseTo(36.576, 6);
  const next = session.plant.rowOf("pole", grown?.toPoleId ?? "");
  expect(next.eastM).toBeCloseTo(session.plant.rowOf("pole", poleId).eastM, 2);
  await expect.poll(() => selection(page)).toEqual([next.id]);
  expect(await hint(page)).toMatch(/^Click where the next pole stands/);
  await undoesInOneStep(opened(), before, /^Undo extend the line/);
});

test("a lateral starts at the pole clicked and goes on from pole to pole until Escape", async () => {
  const { page, session } = opened();
  await drawLateral();
  const added = [...session.route().pole.values()].slice(-2);
  expect(added.map((one) => one.line)).toEqual(["Lateral 1", "Lateral 1"]);
  await page.keyboard.press("Escape");
  await expect.poll(() => hint(page)).toBe("Click the pole where the lateral leaves the line.");
  await page.keyboard.press("Escape");
  await page.locator(".adding-strip").waitFor({ state: "detached" });
});

test("a lateral drawn by hand is strung and spliced on by the mend its finding offers, and one undo takes that back", async () => {
  const { page, session } = opened();
  await drawLateral();
  const added = [...session.route().span.keys()].slice(-2);
  const cableCount = session.route().cable.size;
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await page.getByLabel("Filter by text").fill("carries no strand");
  await page.getByRole("button", { name: "String it from the cable it leaves" }).first().click();
  await expect.poll(() => session.route().cable.size).toBe(cableCount + 1);
  expect(added.map((id) => cablesInSpan(session.plant, id).length)).toEqual([1, 1]);
  const lateral = [...session.route().cable.values()].at(-1);
  expect(lateral?.fromClosureId).not.toBeNull();
  await page.getByText("carries no strand").first().waitFor({ state: "detached" });
  await page.getByRole("button", { name: /^Undo string the new spans/ }).click();
  await expect.poll(() => session.route().cable.size).toBe(cableCount);
});

test("a span is added between two poles clicked, and not twice", async () => {
  const { page, session } = opened();
  const before = rowsOf(opened());
  const { poleId } = lineEnd(opened());
  const [other = ""] = session.route().pole.keys();
  await take(page, "s", "Add a span");
  for (const id of [poleId, other]) {
    const { x, y } = await pointOf(page, id);
    await page.mouse.click(x, y);
  }
  await expect.poll(() => session.route().span.size).toBe(50);
  const back = await pointOf(page, poleId);
  await page.mouse.click(back.x, back.y);
  await expect.poll(() => page.locator(".said").textContent()).toContain("There is a span between these two poles");
  await undoesInOneStep(opened(), before, /^Undo add span/);
});

test("an empty route says what to do and a line can be drawn by hand from nothing", async () => {
  const empty = await openEmpty();
  try {
    const { page, session } = empty;
    const words = page.locator(".stage .empty");
    expect(await words.textContent()).toMatch(/Nothing is on this route yet/);
    await words.getByRole("button", { name: "Add a pole" }).click();
    await page.mouse.click(300, 400);
    await expect.poll(() => session.route().pole.size).toBe(1);
    const [first = ""] = session.route().pole.keys();
    await expect.poll(() => visibleIds(page)).toEqual([first]);
    const { x, y } = await pointOf(page, first);
    await page.mouse.click(x, y);
    await page.mouse.click(x + 90, y);
    await expect.poll(() => session.route().span.size).toBe(1);
    expect(empty.complaints).toEqual([]);
  } finally {
    await empty.close();
  }
});

/** Draws a lateral of two spans from the seventh pole of the line; the tool stays in the hand. */
async function drawLateral(): Promise<void> {
  const { page, session } = opened();
  const [pole] = [...session.route().pole.values()].filter((one) => one.order === 7);
  if (!pole) throw new Error("the demo route has no seventh pole");
  await take(page, "l", "Start a lateral");
  const start = await pointOf(page, pole.id);
  await page.mouse.click(start.x, start.y);
  await page.mouse.click(start.x + 6, start.y + 46);
  await expect.poll(() => session.route().pole.size).toBe(51);
  await page.mouse.click(start.x + 12, start.y + 88);
  await expect.poll(() => session.route().pole.size).toBe(52);
}

import { expect, test } from "vitest";
import { freeSpan, hint, rowsOf, take, undoesInOneStep } from "./addingHands.ts";
import { groundUnder, pointOf, selection } from "./diagram.ts";
import { between } from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import { sideOf } from "./panelHands.ts";

const { opened } = eachOnDemo();

const form = () => opened().page.locator(".adding-strip form");

test("a structure is drawn along a span and told its kind, its side and how far beside the line", async () => {
  const { page, session } = opened();
  const { span, from, to } = await freeSpan(opened());
  const before = rowsOf(opened());
  await take(page, "b", "Add a structure");
  const [a, b] = [between(from, to, 0.3), between(from, to, 0.5)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y, { steps: 6 });
  await page.mouse.up();
  await form().getByLabel("What").selectOption("sign");
  await form().getByLabel("Beside the line", { exact: true }).fill("12 ft");
  await form().getByRole("combobox", { name: /^Side/ }).selectOption("right");
  await form().getByLabel("Top above ground", { exact: true }).fill("tall");
  await page.keyboard.press("Enter");
  await expect
    .poll(() => form().getByLabel("Top above ground", { exact: true }).getAttribute("aria-invalid"))
    .toBe("true");
  await form().getByLabel("Top above ground", { exact: true }).fill("20 ft");
  await page.keyboard.press("Enter");
  const added = () =>
    session.plant.where("structure", "spanId", span.id).map((id) => session.plant.rowOf("structure", id));
  await expect.poll(() => added().length).toBe(1);
  const [sign] = added();
  expect(sign).toMatchObject({ kind: "sign", besideM: 3.6576, side: "right", heightM: 6.096 });
  expect((sign?.lengthM ?? 0) / span.lengthM).toBeCloseTo(0.2, 1);
  await expect.poll(() => selection(page)).toEqual([sign?.id]);
  await page.keyboard.press("Escape");
  const spot = await pointOf(page, sign?.id ?? "");
  await page.mouse.move(spot.x, spot.y);
  await expect
    .poll(() => page.locator(".hover-card").textContent())
    .toBe("Sign12 ft 0 in beside the line, top at 20 ft 0 in");
  await undoesInOneStep(opened(), before, /^Undo add structure/);
});

test("a ground point stands where one clicks, at the elevation typed", async () => {
  const { page, session } = opened();
  const { span, from, to } = await freeSpan(opened());
  const before = rowsOf(opened());
  await take(page, "g", "Add a ground point");
  const spot = between(from, to, 0.4);
  await page.mouse.click(spot.x, spot.y);
  await form().getByLabel("Elevation", { exact: true }).fill("102.5 m");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.plant.where("groundPoint", "spanId", span.id).length).toBe(1);
  const [id = ""] = session.plant.where("groundPoint", "spanId", span.id);
  const point = session.plant.rowOf("groundPoint", id);
  expect(point.groundM).toBeCloseTo(102.5, 9);
  expect(point.offsetM / span.lengthM).toBeCloseTo(0.4, 1);
  await undoesInOneStep(opened(), before, /^Undo add ground point/);
});

test("a guy goes from the pole one clicks to where its anchor stands, and the panel tells what it holds", async () => {
  const { page, session } = opened();
  const before = rowsOf(opened());
  const guyCount = session.route().guy.size;
  const [poleId = ""] = session.route().pole.keys();
  await take(page, "y", "Add a guy");
  const pole = await pointOf(page, poleId);
  await page.mouse.click(pole.x, pole.y);
  await expect.poll(() => hint(page)).toBe("Click where its anchor stands.");
  const anchor = { x: pole.x - 40, y: pole.y + 30 };
  const ground = await groundUnder(page, anchor.x, anchor.y);
  await page.mouse.click(anchor.x, anchor.y);
  await page.getByLabel("Anchor holds, lbf").fill("8000");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.route().guy.size).toBe(guyCount + 1);
  await expect.poll(async () => (await selection(page))[0]).toMatch(/^guy/);
  const [id = ""] = await selection(page);
  const guy = session.plant.rowOf("guy", id);
  const { eastM, northM } = session.plant.rowOf("pole", poleId);
  expect(eastM + guy.leadM * Math.cos(guy.directionRad)).toBeCloseTo(ground.eastM, 2);
  expect(northM + guy.leadM * Math.sin(guy.directionRad)).toBeCloseTo(ground.northM, 2);
  expect(guy.anchorN).toBeCloseTo(35585.8, 0);
  await sideOf(page).getByText("Pull, with load factors").waitFor();
  await page.keyboard.press("Escape");
  await undoesInOneStep(opened(), before, /^Undo add guy/);
});

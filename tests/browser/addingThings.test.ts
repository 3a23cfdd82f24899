import { expect, test } from "vitest";
import { freeSpan, hint, rowsOf, take, undoesInOneStep } from "./addingHands.ts";
import { groundUnder, pointOf, selection } from "./diagram.ts";
import { between } from "./diagramHands.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

test("a crossing is drawn as wide as one drags and of the surface chosen", async () => {
  const { page, session } = opened();
  const { span, from, to } = await freeSpan(opened());
  const before = rowsOf(opened());
  await take(page, "c", "Add a crossing");
  const [a, b] = [between(from, to, 0.4), between(from, to, 0.6)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y, { steps: 6 });
  await page.mouse.up();
  await page.getByLabel("Surface").selectOption("driveway");
  await page.getByLabel("Name").fill("Mill drive");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.plant.where("crossing", "spanId", span.id).length).toBe(1);
  const [id = ""] = session.plant.where("crossing", "spanId", span.id);
  const crossing = session.plant.rowOf("crossing", id);
  expect(crossing).toMatchObject({ surface: "driveway", name: "Mill drive" });
  expect(crossing.widthM / span.lengthM).toBeCloseTo(0.2, 1);
  expect(crossing.offsetM / span.lengthM).toBeCloseTo(0.5, 1);
  await undoesInOneStep(opened(), before, /^Undo add crossing/);
});

test("an attachment is added at the pole clicked; a height that is none is refused beside its field", async () => {
  const { page, session } = opened();
  const before = rowsOf(opened());
  const [poleId = ""] = session.route().pole.keys();
  await take(page, "a", "Add an attachment");
  const { x, y } = await pointOf(page, poleId);
  await page.mouse.click(x, y);
  await page.getByLabel("Owner").fill("Quern Cable");
  await page.getByLabel("Height", { exact: true }).fill("tall");
  await page.keyboard.press("Enter");
  expect(await page.getByLabel("Height", { exact: true }).getAttribute("aria-invalid")).toBe("true");
  await page.getByLabel("Height", { exact: true }).fill("19' 6\"");
  await page.keyboard.press("Enter");
  const owned = () => [...session.route().attachment.values()].filter((one) => one.owner === "Quern Cable");
  await expect.poll(() => owned().length).toBe(1);
  expect(owned()[0]).toMatchObject({ poleId, kind: "communication", heightM: 5.9436 });
  await undoesInOneStep(opened(), before, /^Undo add attachment/);
});

test("a living unit stands where one clicks, with the address typed", async () => {
  const { page, session } = opened();
  const before = rowsOf(opened());
  await take(page, "u", "Add a living unit");
  const ground = await groundUnder(page, 320, 540);
  await page.mouse.click(320, 540);
  await page.getByLabel("Address").pressSequentially("1 Quern Lane");
  await page.keyboard.press("Enter");
  const added = () => [...session.route().livingUnit.values()].find((one) => one.address === "1 Quern Lane");
  await expect.poll(() => added() !== undefined).toBe(true);
  expect(added()?.eastM).toBeCloseTo(ground.eastM, 2);
  await undoesInOneStep(opened(), before, /^Undo add living unit/);
});

test("a terminal is hung at the standard distance from the pole one clicks near", async () => {
  const { page, session } = opened();
  const { span, from, to } = await freeSpan(opened());
  const before = rowsOf(opened());
  const formerCount = session.route().terminal.size;
  await take(page, "t", "Hang a terminal");
  const spot = between(from, to, 0.25);
  await page.mouse.click(spot.x, spot.y);
  await expect.poll(() => session.route().terminal.size).toBe(formerCount + 1);
  await expect.poll(() => selection(page)).toHaveLength(1);
  const [id = ""] = await selection(page);
  const terminal = session.plant.rowOf("terminal", id);
  if (terminal.reason === "") expect(terminal).toMatchObject({ spanId: span.id, offsetM: 0.9144 });
  await undoesInOneStep(opened(), before, /^Undo hang terminal/);
});

test("Escape takes one step back at a time and leaves the route as it was", async () => {
  const { page, session } = opened();
  const before = session.route();
  await take(page, "u", "Add a living unit");
  await page.mouse.click(320, 540);
  await page.getByLabel("Address").waitFor();
  await page.keyboard.press("Escape");
  await page.getByLabel("Address").waitFor({ state: "detached" });
  await page.keyboard.press("Escape");
  await page.locator(".adding-strip").waitFor({ state: "detached" });
  expect(session.route()).toBe(before);
});

test("the rail is one tab stop with arrows inside, each tool named with its key", async () => {
  const { page } = opened();
  const rail = page.getByRole("toolbar", { name: "Add by hand" });
  const names = await rail.getByRole("button").evaluateAll((all) => all.map((one) => one.getAttribute("aria-label")));
  expect(names).toHaveLength(10);
  await rail.getByRole("button", { name: "Add a pole" }).focus();
  expect(await page.getByRole("tooltip").textContent()).toContain("P");
  await page.keyboard.press("ArrowDown");
  const focused = () => page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
  await expect.poll(focused).toBe("Add a span");
  await page.keyboard.press("Enter");
  expect(await hint(page)).toBe("Click the pole where the span begins.");
  await rail.getByRole("button", { name: "Hang a terminal" }).click();
  expect(await hint(page)).toBe("Click a span near the pole the terminal hangs beside.");
});

test("a click on the page beside the ground is refused in words while the route is straightened", async () => {
  const { page, session } = opened();
  const before = session.route();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("r");
  await take(page, "u", "Add a living unit");
  await page.mouse.click(320, 540);
  await expect.poll(() => page.locator(".said").textContent()).toContain("draw the route true to the ground first");
  expect(session.route()).toBe(before);
});

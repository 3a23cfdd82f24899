import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { governingOfGuy } from "../../core/plant/guyStrength.ts";
import { stateIn } from "../../core/plant/strength.ts";
import { newtonsPerPoundForce } from "../../core/units/constants.ts";
import { kindOf } from "../../renderer/tables/kinds.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

async function settings(page: Page): Promise<Locator> {
  await page.keyboard.press("Control+,");
  const room = page.getByRole("region", { name: "Standards and catalogues" });
  await room.waitFor();
  return room;
}

async function backToDiagram(room: Locator): Promise<void> {
  await room.getByRole("button", { name: "Back to the diagram" }).click();
  await room.waitFor({ state: "detached" });
}

async function headings(page: Page): Promise<readonly (string | null | undefined)[]> {
  return page.getByRole("columnheader").evaluateAll((all) => all.map((one) => one.querySelector("span")?.textContent));
}

async function steelTable(page: Page): Promise<void> {
  await page.keyboard.press("Control+g");
  await page.getByRole("tab", { name: "Steel and clearance", exact: true }).click();
  await page.getByRole("grid", { name: "Steel and clearance", exact: true }).focus();
}

const windTension = "Tension extreme wind (lbf)";

test("extreme wind is chosen for the route by keys: the strand table gains its case, and one undo takes it back", async () => {
  const { page, session } = opened();
  await steelTable(page);
  expect(await headings(page)).toContain("Tension with worker (lbf)");
  expect(await headings(page)).not.toContain(windTension);
  const room = await settings(page);
  const field = room.getByLabel("Extreme wind", { exact: true });
  expect(await field.locator("option:checked").textContent()).toBe("Not checked");
  await field.focus();
  await page.keyboard.press("ArrowDown");
  await expect.poll(() => session.plant.settings().extremeWindId).toBe("extreme-wind-85");
  await backToDiagram(room);
  await expect.poll(() => headings(page)).toContain(windTension);
  const [spanId = ""] = kindOf("steel").ids(session.route(), session.plant);
  const pulledN = stateIn(session.plant, spanId, "extremeWind")?.supportN ?? Number.NaN;
  const cell = page.locator(`[data-cell="0 ${(await headings(page)).indexOf(windTension)}"]`);
  await cell.scrollIntoViewIfNeeded();
  expect(Number(await cell.textContent())).toBeCloseTo(pulledN / newtonsPerPoundForce, 0);
  await cell.click();
  await page.keyboard.press("?");
  const card = page.getByRole("dialog", { name: "How this figure comes about" });
  expect(await card.textContent()).toContain(
    "Asked for only where a part of a pole or of its line stands more than 60 ft above ground",
  );
  await page.keyboard.press("Escape");
  await card.waitFor({ state: "detached" });
  await page.keyboard.press("Control+z");
  await expect.poll(() => session.plant.settings().extremeWindId).toBe(null);
  await expect.poll(() => headings(page)).not.toContain(windTension);
});

test("extreme wind over what its limit allows is chosen with the mouse: findings come that name it, and go when it is taken off", async () => {
  const { page, session } = opened();
  const room = await settings(page);
  const sections = room.getByRole("navigation", { name: "Sections" });
  await sections.getByRole("button", { name: "Strength limits", exact: true }).click();
  await room.getByRole("button", { name: /^NESC grade B: strand extreme wind/ }).click();
  const limit = room.getByLabel("Part of the breaking strength", { exact: true });
  await limit.fill("20 %");
  await limit.press("Enter");
  await expect.poll(() => session.route().strengthLimit.get("nesc-strand-extremeWind")?.limitFrac).toBe(0.2);
  await sections.getByRole("button", { name: "Company standards", exact: true }).click();
  await room.getByLabel("Extreme wind", { exact: true }).selectOption({ label: "Extreme wind 150 mph" });
  await expect.poll(() => session.plant.settings().extremeWindId).toBe("extreme-wind-150");
  await backToDiagram(room);
  const panel = page.getByRole("region", { name: "Findings" });
  await panel.getByLabel("Filter by text").fill("Extreme wind 150 mph");
  const shown = panel.locator("li.finding");
  const overPulled = session.findings().filter((one) => one.ruleId === "strand-tension");
  expect(overPulled.length).toBeGreaterThan(40);
  await expect.poll(() => shown.count()).toBe(overPulled.length);
  expect(await shown.first().textContent()).toContain(
    "the strand is pulled too hard under the load of Extreme wind 150 mph",
  );
  expect(await shown.first().textContent()).toContain("worked out from unverified figures of");
  await page.getByRole("button", { name: /^Undo ./ }).click();
  await expect.poll(() => shown.count()).toBe(0);
});

test("the profile draws the further cases the route is checked under, and its key names them", async () => {
  const { page } = opened();
  const room = await settings(page);
  await room.getByLabel("Extreme ice with wind", { exact: true }).selectOption({ index: 4 });
  await backToDiagram(room);
  await page.keyboard.press("Control+e");
  const key = page.getByRole("list", { name: "Lines" });
  await key.waitFor();
  await expect
    .poll(() => key.getByRole("listitem").allTextContents())
    .toEqual(["Cold", "Strung", "Hot", "Iced", "Extreme ice", "Worker at midspan"]);
});

test("the grade of construction is chosen for the route: the guys' pull with load factors follows it", async () => {
  const { page, session } = opened();
  await page.keyboard.press("Control+g");
  await page.getByRole("tab", { name: "Guys", exact: true }).click();
  const column = (await headings(page)).indexOf("Pull with load factors (lbf)");
  const cell = page.locator(`[data-cell="0 ${column}"]`);
  const pullInB = Number(await cell.textContent());
  const room = await settings(page);
  await room.getByLabel("Strength set", { exact: true }).selectOption({ label: "NESC grade C" });
  await expect.poll(() => session.plant.settings().strengthSetId).toBe("strength-nesc-c");
  await backToDiagram(room);
  const [guyId = ""] = session.route().guy.keys();
  const pulledN = governingOfGuy(session.plant, guyId).tensionN ?? Number.NaN;
  await expect.poll(async () => Number(await cell.textContent())).toBeCloseTo(pulledN / newtonsPerPoundForce, -1);
  expect(Number(await cell.textContent()) / pullInB).toBeCloseTo(1.3 / 1.65, 2);
});

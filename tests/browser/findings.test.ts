import { expect, test } from "vitest";
import { subjectsText } from "../../core/rules/finding.ts";
import { selection } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

/** Hangs terminals off the standard distance, so that each is a finding with a fix. */
function hangAstray(count: number): readonly string[] {
  const { session } = opened();
  const ids: string[] = [];
  for (const terminal of session.route().terminal.values()) {
    if (ids.length === count) break;
    const span = session.plant.rowOf("span", terminal.spanId);
    const offsetM = terminal.offsetM < span.lengthM / 2 ? 2 : span.lengthM - 2;
    const moved = session.run("terminal.move", { terminalId: terminal.id, spanId: span.id, offsetM });
    if (moved.ok) ids.push(terminal.id);
  }
  return ids;
}

const astray = () =>
  opened()
    .session.findings()
    .filter((one) => one.ruleId === "terminal-standoff" && one.waiverId === null);

test("planted faults are listed, filtered by text, and each leads to its place", async () => {
  const { page, session } = opened();
  const ids = hangAstray(5);
  await page.reload();
  const panel = page.getByRole("region", { name: "Findings" });
  await panel.getByLabel("Filter by text").fill("standard distance");
  await expect.poll(() => panel.locator("li.finding").count()).toBe(astray().length);
  expect(astray().length).toBeGreaterThanOrEqual(5);
  for (const id of ids) {
    const finding = astray().find((one) => subjectsText(one.subjects).includes(id));
    await panel.locator(`[data-finding="${finding?.key}"]`).click();
    await expect.poll(() => selection(page)).toEqual([id]);
  }
  await panel.getByLabel("Group by").selectOption("place");
  const [first] = session.route().terminal.values();
  await panel.getByRole("heading", { name: new RegExp(`^Terminal ${first?.name}`) }).waitFor();
});

test("findings are sorted by place or by excess over the limit; order, counts and the hand follow a fix and its undo", async () => {
  const { page, session } = opened();
  hangAstray(5);
  await page.reload();
  const panel = page.getByRole("region", { name: "Findings" });
  await panel.getByLabel("Group by").selectOption("nothing");
  await panel.getByLabel("Sort").selectOption("west to east");
  const shownKeys = () =>
    panel.locator("[data-finding]").evaluateAll((all) => all.map((one) => one.getAttribute("data-finding")));
  const shown = async () =>
    (await shownKeys()).map((key) => {
      const finding = session.findings().find((one) => one.key === key);
      if (!finding) throw new Error(`the panel shows ${key}, which the route does not have`);
      return finding;
    });
  const eastM = async () => (await shown()).map((one) => one.at?.eastM ?? Number.POSITIVE_INFINITY);
  const isRising = (figures: readonly number[]) => figures.every((one, i) => i === 0 || one >= (figures[i - 1] ?? 0));
  await expect.poll(async () => isRising(await eastM())).toBe(true);
  expect(await shownKeys()).toHaveLength(session.findings().length);

  await panel.getByLabel("Sort").selectOption("furthest past the limit");
  const excess = (await shown()).flatMap(({ measured, limit }) =>
    measured === null || limit === null ? [] : [Math.abs(measured - limit) / (Math.abs(limit) || 1)],
  );
  expect(excess.length).toBeGreaterThan(5);
  expect(isRising(excess.map((one) => -one))).toBe(true);

  await panel.getByLabel("Sort").selectOption("west to east");
  await panel.getByLabel("Filter by text").fill("standard distance");
  const count = astray().length;
  const warnings = panel.getByRole("button", { name: /warnings?$/ });
  const warningCount = Number.parseInt((await warnings.textContent()) ?? "", 10);
  await panel.locator("[data-finding]").first().focus();
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect.poll(() => panel.locator("[data-finding]").count()).toBe(count - 1);
  expect(Number.parseInt((await warnings.textContent()) ?? "", 10)).toBe(warningCount - 1);
  expect(isRising(await eastM())).toBe(true);
  expect(await page.evaluate(() => document.activeElement?.closest(".findings") !== null)).toBe(true);
  await page.keyboard.press("Control+z");
  await expect.poll(() => panel.locator("[data-finding]").count()).toBe(count);
  expect(isRising(await eastM())).toBe(true);
});

test("all fixes of a kind are counted first, applied as one edit, and one undo brings every finding back", async () => {
  const { page } = opened();
  hangAstray(4);
  await page.reload();
  const count = astray().length;
  const panel = page.getByRole("region", { name: "Findings" });
  await panel.getByLabel("Filter by text").fill("standard distance");
  await panel.getByRole("button", { name: `Fix all ${count}` }).click();
  const told = (await panel.locator(".fix-all output").textContent()) ?? "";
  const willMend = Number(/^\d+/.exec(told)?.[0]);
  expect(willMend).toBeGreaterThan(1);
  await panel.getByRole("button", { name: `Apply ${willMend} fixes` }).click();
  await expect.poll(() => astray().length).toBe(count - willMend);
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+z");
  await expect.poll(() => astray().length).toBe(count);
});

test("a finding is waived with a reason and a name, and the waiver can be taken back", async () => {
  const { page, session } = opened();
  const [id = ""] = hangAstray(1);
  await page.reload();
  const finding = astray().find((one) => subjectsText(one.subjects).includes(id));
  if (!finding) throw new Error("the terminal hangs well");
  const row = page.locator(".findings li.finding", { has: page.locator(`[data-finding="${finding.key}"]`) });
  await row.getByRole("button", { name: "Waive", exact: true }).click();
  await row.getByLabel("Reason").fill("the riser is in the way");
  await row.getByRole("button", { name: "Waive it" }).click();
  await row.getByRole("alert").waitFor();
  expect(session.route().waiver.size).toBe(0);
  await row.getByLabel("Name").fill("R. Hale");
  await row.getByLabel("Name").press("Enter");
  await expect
    .poll(() => [...session.route().waiver.values()].map(({ reason, by }) => [reason, by]))
    .toEqual([["the riser is in the way", "R. Hale"]]);
  await row.getByText("waived by R. Hale: the riser is in the way").waitFor();
  await row.getByRole("button", { name: "Take the waiver back" }).click();
  await expect.poll(() => session.route().waiver.size).toBe(0);
});

test("a finding explains its rule, its basis in words and its figures", async () => {
  const { page } = opened();
  hangAstray(1);
  await page.reload();
  const [finding] = astray();
  const row = page.locator(".findings li.finding", { has: page.locator(`[data-finding="${finding?.key}"]`) });
  await row.getByRole("button", { name: "Explain" }).click();
  const told = await row.locator(".finding-explained").textContent();
  expect(told).toContain("Terminal hangs at the standard distance from the pole.");
  expect(told).toContain("practice, no published source");
  expect(told).toMatch(/measured .*, limit /);
});

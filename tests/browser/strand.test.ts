import { expect, test } from "vitest";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

async function showTable(name: string): Promise<void> {
  await opened().page.getByRole("tab", { name, exact: true }).click();
  await opened().page.getByRole("grid", { name, exact: true }).waitFor();
}

async function cell(row: number, heading: string) {
  const { page } = opened();
  const headings = await page
    .getByRole("columnheader")
    .evaluateAll((all) => all.map((one) => one.querySelector("span")?.textContent));
  return page.locator(`[data-cell="${row} ${headings.indexOf(heading)}"]`);
}

test("strand set to slip at its poles pulls alike in every span of its section, and the figure says so", async () => {
  const { page, session } = opened();
  const strung = [...session.route().span.values()].filter((one) => one.strandSectionId !== null);
  const sectionId = strung[0]?.strandSectionId ?? "";
  expect(strung.slice(0, 3).map((one) => one.strandSectionId)).toEqual([sectionId, sectionId, sectionId]);
  await page.keyboard.press("Control+g");
  await showTable("Strand");
  await (await cell([...session.route().strandSection.keys()].indexOf(sectionId), "At the poles")).dblclick();
  await page.keyboard.press("Control+a");
  await page.keyboard.type("slipping");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.route().strandSection.get(sectionId)?.atPoles).toBe("slipping");
  await showTable("Steel and clearance");
  await page.getByRole("grid", { name: "Steel and clearance" }).focus();
  await page.keyboard.press("Control+Home");
  await (await cell(0, "Tension strung (lbf)")).click();
  const pulls: (string | undefined)[] = [];
  for (let row = 0; row < 3; row += 1) {
    await page.keyboard.press("?");
    const card = page.getByRole("dialog", { name: "How this figure comes about" });
    await card.getByText("is taken to slip at its poles without friction").waitFor();
    pulls.push(/horizontal tension at stringing([\d.]+ lbf)/.exec((await card.textContent()) ?? "")?.[1]);
    await page.keyboard.press("Escape");
    await card.waitFor({ state: "detached" });
    await page.keyboard.press("ArrowDown");
  }
  expect(pulls[0]).toBeDefined();
  expect(new Set(pulls).size).toBe(1);
});

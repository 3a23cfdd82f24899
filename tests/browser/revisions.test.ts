import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { selection } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import { pressOn } from "./panelHands.ts";

const { opened } = eachOnDemo();

const panelOf = (page: Page) => page.getByRole("complementary", { name: "Revisions" });
const letters = () => [...opened().session.route().revision.values()].map((one) => one.letter);

/** Issues the route by the keyboard alone: the form has the next letter, the day and who issued last. */
async function issue(page: Page, reason: string): Promise<void> {
  const count = letters().length;
  await panelOf(page).getByRole("button", { name: "Issue a revision" }).press("Enter");
  const form = panelOf(page).getByRole("form", { name: "Issue a revision" });
  await page.keyboard.type(reason);
  if (count === 0) {
    await form.getByLabel("By", { exact: true }).focus();
    await page.keyboard.type("M. Okafor");
  }
  await page.keyboard.press("Enter");
  await expect.poll(() => letters().length).toBe(count + 1);
  await form.waitFor({ state: "detached" });
}

test("a revision is issued by keyboard, what is edited since is listed and leads to its place, undo takes the issue back", async () => {
  const { page, session } = opened();
  await page.keyboard.press("Control+Shift+e");
  await panelOf(page).getByText("No revision is issued yet.").waitFor();
  await issue(page, "For review");
  expect(letters()).toEqual(["A"]);
  await panelOf(page).getByText("Nothing has changed since revision A.").waitFor();
  const [terminal] = session.route().terminal.values();
  if (!terminal) throw new Error("the demo route has no terminal");
  await rename(page, terminal.id);
  await page.keyboard.press("Escape");
  const line = panelOf(page).getByRole("button", { name: `Terminal T-900: renamed, before “${terminal.name}”` });
  await line.press("Enter");
  expect(await selection(page)).toEqual([terminal.id]);
  await panelOf(page).getByRole("heading", { name: "Changed since revision A" }).waitFor();
  await issue(page, "Renamed");
  expect(letters()).toEqual(["A", "B"]);
  await panelOf(page).getByRole("heading", { name: "Changed from revision A to B" }).waitFor();
  await page.keyboard.press("Control+z");
  await expect.poll(letters).toEqual(["A"]);
  await panelOf(page).getByRole("heading", { name: "Changed since revision A" }).waitFor();
});

/** Gives a terminal another name on the diagram. */
async function rename(page: Page, terminalId: string): Promise<void> {
  await pressOn(page, terminalId);
  await page.keyboard.press("F2");
  await page.getByLabel("Terminal name").fill("T-900");
  await page.keyboard.press("Enter");
  await expect.poll(() => opened().session.route().terminal.get(terminalId)?.name).toBe("T-900");
}

test("a form without a name or reason says so, Escape gives up; approving and making void are signed and stay on record", async () => {
  const { page, session } = opened();
  await page.keyboard.press("Control+Shift+e");
  await panelOf(page).getByRole("button", { name: "Issue a revision" }).click();
  await page.keyboard.press("Enter");
  await panelOf(page).getByRole("alert").waitFor();
  expect(letters()).toEqual([]);
  await page.keyboard.press("Escape");
  await panelOf(page).getByRole("form").waitFor({ state: "detached" });
  await issue(page, "For review");
  await panelOf(page).getByRole("button", { name: "Approve revision A" }).click();
  await page.keyboard.type("L. Brandt");
  await page.keyboard.press("Enter");
  await panelOf(page)
    .getByText(/^Approved \d{4}-\d\d-\d\d by L\. Brandt$/)
    .waitFor();
  await panelOf(page).getByRole("button", { name: "Void revision A" }).click();
  await page.keyboard.type("Wrong pole list");
  await page.keyboard.press("Enter");
  await panelOf(page).getByRole("alert").waitFor();
  await panelOf(page).getByRole("form").getByLabel("By", { exact: true }).fill("L. Brandt");
  await page.keyboard.press("Enter");
  await panelOf(page)
    .getByText(/^Void since .* by L\. Brandt: Wrong pole list$/)
    .waitFor();
  expect([...session.route().revision.values()][0]).toMatchObject({ approvedBy: "L. Brandt", voidedBy: "L. Brandt" });
  expect(
    await panelOf(page)
      .getByRole("button", { name: /^(Approve|Void) revision A/ })
      .count(),
  ).toBe(0);
});

test("the sheets of a revision are shown as they were issued, beside the list of revisions", async () => {
  const { page, session } = opened();
  const name = session.plant.settings().routeName;
  await page.keyboard.press("Control+Shift+e");
  await issue(page, "For review");
  const done = session.run("settings.set", { values: { routeName: "Renamed since" } });
  expect(done.ok).toBe(true);
  await panelOf(page).getByRole("button", { name: "Show sheets of revision A" }).click();
  const sheets = page.getByRole("region", { name: "Sheets" });
  await sheets.getByText("Revision A", { exact: true }).first().waitFor();
  await expect.poll(() => sheets.locator("svg").textContent()).toContain(name);
  await panelOf(page).waitFor();
});

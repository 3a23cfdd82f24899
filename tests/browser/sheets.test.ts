import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { eachOnDemo } from "./eachOnDemo.ts";
import { pressOn } from "./panelHands.ts";

const { opened } = eachOnDemo();

const indexOf = (page: Page) => page.getByRole("navigation", { name: "Sheets" });

test("a terminal chosen on the diagram leads to its own sheet in one step, and from there to the whole set", async () => {
  const { page, session } = opened();
  const [terminal] = session.route().terminal.values();
  await pressOn(page, terminal?.id ?? "");
  await page.keyboard.press("o");
  await page.getByRole("img", { name: new RegExp(`^Sheet \\d+, Terminal ${terminal?.name}$`) }).waitFor();
  expect(await indexOf(page).getByRole("listitem").count()).toBe(1);
  await indexOf(page).getByRole("button", { name: "Show the whole set" }).click();
  await indexOf(page).getByRole("button", { name: "1 Cover" }).waitFor();
  await page.getByRole("img", { name: new RegExp(`^Sheet \\d+, Terminal ${terminal?.name}$`) }).waitFor();
});

test("sheets say that the route was edited since they were drawn, and are drawn anew", async () => {
  const { page } = opened();
  await page.getByRole("button", { name: "Preview sheets" }).click();
  await indexOf(page).getByText("Not issued").waitFor();
  await page.getByRole("button", { name: "Switch to metric units" }).click();
  await indexOf(page).getByText("The route was edited since these sheets were drawn.").waitFor();
  await indexOf(page).getByRole("button", { name: "Draw them anew" }).click();
  await expect.poll(() => page.locator(".paper svg").textContent()).toContain(" m");
  await indexOf(page).getByText("The route was edited since these sheets were drawn.").waitFor({ state: "detached" });
});

test("a revision is chosen in the preview, shown as it was issued, and so drawn", async () => {
  const { page, session } = opened();
  const why = { letter: "A", dateIso: "2026-03-02", by: "Ann", checkedBy: "", reason: "For review" };
  session.run("revision.issue", { revisionId: "revision-A", ...why });
  session.run("settings.set", { values: { routeName: "Renamed since" } });
  await page.reload();
  await page.locator("canvas").first().waitFor();
  await page.getByRole("button", { name: "Preview sheets" }).click();
  await indexOf(page).getByText("After revision A").waitFor();
  await expect.poll(() => page.locator(".paper svg").textContent()).toContain("Renamed since");
  await indexOf(page).getByLabel("State of the route").selectOption("Revision A, issued 2026-03-02");
  await indexOf(page).getByText("Revision A", { exact: true }).waitFor();
  await expect.poll(() => page.locator(".paper svg").textContent()).not.toContain("Renamed since");
});

test("sheets chosen go to the print dialog a page each at true size, and the window is as it was after", async () => {
  const { page } = opened();
  await page.evaluate(() => {
    window.print = () => {
      document.body.dataset.printing = "yes";
    };
  });
  await page.getByRole("button", { name: "Preview sheets" }).click();
  await page.locator(".paper svg").waitFor();
  await page.getByLabel("Sheets to draw").selectOption("range");
  await page.getByLabel("Numbers, such as 3-5, 9").fill("2-4");
  await page.getByRole("button", { name: "Print these sheets" }).click();
  await page.locator("body[data-printing]").waitFor();
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  const boxes = [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
  expect(boxes.map((box) => [Math.round(Number(box[1])), Math.round(Number(box[2]))])).toEqual(
    Array(3).fill([1224, 792]),
  );
  await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
  await page.locator(".print-room").waitFor({ state: "detached" });
});

test("another paper is chosen in the preview: the same sheet stays in view, its scale is told, and the set is saved on it", async () => {
  const { page, session } = opened();
  const [terminal] = session.route().terminal.values();
  await page.getByRole("button", { name: "Preview sheets" }).click();
  const card = page.getByRole("img", { name: new RegExp(`^Sheet \\d+, Terminal ${terminal?.name}(, 1 of \\d)?$`) });
  const shape = () => page.locator(".paper svg").getAttribute("viewBox");
  await indexOf(page)
    .getByRole("button", { name: new RegExp(`Terminal ${terminal?.name}$`) })
    .click();
  await card.waitFor();
  const paper = indexOf(page).getByLabel("Paper");
  expect(await paper.locator("option:checked").textContent()).toBe("The company's: ANSI B");
  await paper.selectOption("A4");
  await expect.poll(shape).toBe("0 0 297 210");
  await card.waitFor();
  await indexOf(page)
    .getByText(/^\d+ sheets, plans at 1 in = \d+ ft$/)
    .waitFor();
  await indexOf(page)
    .getByRole("button", { name: /Strand plan/ })
    .first()
    .click();
  await page.getByRole("img", { name: /, Strand plan/ }).waitFor();
  await page.getByLabel("Sheets to draw").selectOption("current");
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Draw these sheets" }).click(),
  ]);
  const pdf = (await readFile(await saved.path())).toString("latin1");
  const [picture] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save as PNG" }).click(),
  ]);
  expect(picture.suggestedFilename()).toMatch(/ \d{3}-plan\.png$/);
  // 297 x 210 mm at 200 dots an inch
  expect((await readFile(await picture.path())).subarray(16, 24).toString("hex")).toBe("0000092300000676");
  expect([...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map((box) => Math.round(Number(box[1])))).toEqual([
    842,
  ]);
});

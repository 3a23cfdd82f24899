import { expect, test } from "vitest";
import { explain } from "../../core/explain/explain.ts";
import { spanSag } from "../../core/plant/spanSag.ts";
import { worked } from "../unit/explain/worked.ts";
import { selection } from "./diagram.ts";
import { eachOnDemo, withClipboard } from "./eachOnDemo.ts";
import { pressOn, sideOf } from "./panelHands.ts";

const { opened } = eachOnDemo(undefined, withClipboard);

/** The numbers put into a formula, and what they come to, as the card shows them. */
function putInto(text: string, symbol: string, unit: string): readonly [numbers: string, value: number] {
  const put = new RegExp(`${symbol} = ([\\d. ·²/()+√-]+) = ([\\d.]+) ${unit}`).exec(text);
  if (!put?.[1]) throw new Error(`no numbers were put in: ${text}`);
  return [put[1], Number(put[2])];
}

/** Chooses a strung span by pressing it and answers with its id. */
async function chooseSpan(): Promise<string> {
  const { page, session } = opened();
  const span = [...session.route().span.values()].find((one) => one.strandSectionId !== null);
  if (!span) throw new Error("the demo route has no strand");
  await pressOn(page, span.fromPoleId);
  const link = sideOf(page).locator(".lines").getByRole("button").first();
  await link.click();
  const [id = ""] = await selection(page);
  return id;
}

test("the key ? on a sag opens its formula; the numbers are those of the rows and give the figure again", async () => {
  const { page, session } = opened();
  const spanId = await chooseSpan();
  const sag = spanSag(session.plant, spanId);
  const told = explain(session.plant, { figure: "sag", id: spanId, part: "hot" }, "us");
  if (sag.kind === "unknown" || told?.kind !== "known") throw new Error("the span has no sag");
  await sideOf(page).locator("tr", { hasText: "Hot" }).getByRole("button").last().focus();
  await page.keyboard.press("?");
  const card = page.getByRole("dialog", { name: "How this figure comes about" });
  const text = (await card.textContent()) ?? "";
  expect(text).toContain(`D = ${told.formula}`);
  expect(text).toContain("textbook statics");
  const [numbers, sagM] = putInto(text, "D", "m");
  expect(worked(numbers, [])).toBeCloseTo(sag.hot.sagM, 4);
  expect(sagM).toBeCloseTo(sag.hot.sagM, 5);
  for (const input of told.inputs) expect(text).toContain(`${input.symbol}${input.name}${input.text}`);
  await page.keyboard.press("Escape");
  await card.waitFor({ state: "detached" });
  expect(await selection(page)).toEqual([spanId]);
});

/** Shows a table and puts the hand on a cell of it. */
async function onCell(table: string, row: number, heading: string): Promise<void> {
  const { page } = opened();
  await page.getByRole("tab", { name: table, exact: true }).click();
  await page.getByRole("grid", { name: table, exact: true }).waitFor();
  const headings = await page
    .getByRole("columnheader")
    .evaluateAll((all) => all.map((one) => one.querySelector("span")?.textContent));
  await page.locator(`[data-cell="${row} ${headings.indexOf(heading)}"]`).click();
}

test("the key ? on a computed cell of a table opens its formula; inputs are those of the rows, with their source", async () => {
  const { page, session } = opened();
  await page.keyboard.press("Control+g");
  const spanIds = [...session.route().span.keys()];
  const row = spanIds.findIndex((id) => spanSag(session.plant, id).kind === "known");
  const spanId = spanIds[row] ?? "";
  const told = explain(session.plant, { figure: "supportTension", id: spanId, part: "loaded" }, "us");
  if (told?.kind !== "known") throw new Error("no span is strung");
  await onCell("Spans", row, "Tension loaded (lbf)");
  await page.keyboard.press("?");
  const card = page.getByRole("dialog", { name: "How this figure comes about" });
  const text = (await card.textContent()) ?? "";
  expect(text).toContain("T = √(H² + V²)");
  expect(text).toContain(
    "Formula from: level and vertical pull on the pole the span hangs heavier on; textbook statics.",
  );
  expect(text).toContain("Largest tension the strength set allows");
  const [numbers, supportN] = putInto(text, "T", "N");
  expect(worked(numbers, [])).toBeCloseTo(supportN, 0);
  expect(supportN).toBeCloseTo(told.result.value, 1);
  for (const input of told.inputs) expect(text).toContain(`${input.symbol}${input.name}${input.text}`);
  await page.keyboard.press("Escape");
  await card.waitFor({ state: "detached" });
  expect(await page.evaluate(() => document.activeElement?.getAttribute("role"))).toBe("grid");
  await onCell("Drops", 0, "Loss down (dB)");
  await page.keyboard.press("Enter");
  await card.getByText("Formula from").waitFor();
});

test("where a cell is typed the key ? is a letter, and a figure without a formula says that it is worked out", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+g");
  await onCell("Spans", 0, "Note");
  await page.keyboard.press("?");
  await expect.poll(() => page.locator(".grid input").inputValue()).toBe("?");
  await page.keyboard.press("Escape");
  await onCell("Spans", 0, "Crossings");
  await page.keyboard.press("?");
  await page.getByText("Crossings: worked out, not typed.").waitFor();
  expect(await page.getByRole("dialog").count()).toBe(0);
});

test("resting the pointer shows the explanation; an input leads to the row it is read from", async () => {
  const { page, session } = opened();
  await chooseSpan();
  await sideOf(page).locator("tr", { hasText: "Iced" }).getByRole("button").first().hover();
  const card = page.getByRole("dialog", { name: "How this figure comes about" });
  await card.waitFor();
  await card.getByRole("button", { name: "temperature at stringing" }).click();
  const [id = ""] = await selection(page);
  expect(session.route().strandSection.has(id)).toBe(true);
});

test("an explanation is pinned, follows an edit, and is copied as text", async () => {
  const { page, session } = opened();
  const spanId = await chooseSpan();
  await sideOf(page).locator("tr", { hasText: "Hot" }).getByRole("button").last().click();
  const card = page.getByRole("dialog", { name: "How this figure comes about" });
  await card.getByRole("button", { name: "Copy as text" }).click();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toMatch(/^Sag hot, span .*\n/);
  expect(copied).toMatch(/D = .* \/ .*H/);
  await card.getByRole("button", { name: "Pin" }).click();
  const pinned = page.getByRole("region", { name: "Pinned explanations" });
  const result = pinned.locator(".explained-result");
  const before = await result.textContent();
  const { strandSectionId } = session.plant.rowOf("span", spanId);
  const section = session.route().strandSection.get(strandSectionId ?? "");
  await sideOf(page)
    .getByRole("button", { name: section?.name ?? "", exact: true })
    .click();
  const field = sideOf(page).getByLabel(/^Stringing sag/);
  await field.fill("3");
  await field.press("Enter");
  await expect.poll(() => result.textContent()).not.toBe(before);
  await pinned.getByRole("button", { name: "Close the explanation" }).click();
  await pinned.waitFor({ state: "detached" });
});

test("the table of steel and clearance tells every case, and ? explains each tension there", async () => {
  const { page, session } = opened();
  await page.keyboard.press("Control+g");
  const strung = [...session.route().span.values()].filter((one) => one.strandSectionId !== null).map((one) => one.id);
  const row = strung.findIndex((id) => spanSag(session.plant, id).kind === "known");
  const told = explain(session.plant, { figure: "supportTension", id: strung[row] ?? "", part: "iced" }, "us");
  if (told?.kind !== "known") throw new Error("no span is strung");
  await onCell("Steel and clearance", row, "Tension iced (lbf)");
  await page.keyboard.press("?");
  const card = page.getByRole("dialog", { name: "How this figure comes about" });
  await card.getByText(told.title).waitFor();
  expect(await card.locator(".explained-result").textContent()).toBe(told.result.text);
  expect(await card.textContent()).toContain("Formula from");
});

test("a worksheet works the figure out step by step with the source of every input, and prints by itself", async () => {
  const { page, session } = opened();
  const spanId = await chooseSpan();
  await sideOf(page).locator("tr", { hasText: "Iced" }).getByRole("button").first().click();
  const card = page.getByRole("dialog", { name: "How this figure comes about" });
  await card.getByRole("button", { name: "Worksheet" }).click();
  const sheet = page.getByRole("dialog", { name: "Worksheet" });
  await sheet.waitFor();
  await card.waitFor({ state: "detached" });
  const told = explain(session.plant, { figure: "tension", id: spanId, part: "iced" }, "us");
  if (told?.kind !== "known") throw new Error("the span has no tension under ice");
  const text = (await sheet.textContent()) ?? "";
  expect(text).toContain(told.title);
  for (const input of told.inputs) expect(text).toContain(input.name);
  const steps = await sheet.getByRole("table", { name: "Worked out, in SI units" }).locator("tr").allTextContents();
  expect(steps.length).toBeGreaterThan(3);
  expect(Number(steps.at(-1)?.split("= ").at(-1))).toBeCloseTo(told.result.value, 1);
  const district = session.plant.rowOf("loadingDistrict", session.plant.settings().loadingDistrictId);
  expect(text).toContain(district.basisDocument);
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".middle").isVisible()).toBe(false);
  expect(await sheet.isVisible()).toBe(true);
  expect(await sheet.getByRole("button", { name: "Print" }).isVisible()).toBe(false);
  expect(await sheet.getByRole("table", { name: "What goes in" }).isVisible()).toBe(false);
  const paper = sheet.locator(".worksheet-paper svg");
  expect(await paper.first().isVisible()).toBe(true);
  expect(await paper.first().locator("text").allTextContents()).toContain(
    `${told.result.symbol} = ${told.result.text}`,
  );
  await page.emulateMedia({ media: "screen" });
  expect(await paper.first().isVisible()).toBe(false);
  await page.keyboard.press("Escape");
  await sheet.waitFor({ state: "detached" });
  expect(await selection(page)).toEqual([spanId]);
});

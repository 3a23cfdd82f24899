import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { eachOnMachine } from "./eachOnMachine.ts";
import { openDemoRoute } from "./programs.ts";

const { machine } = eachOnMachine();

const svg =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 240 60"><path d="M5 50Q60 10 115 50" fill="none" stroke="#0a5" stroke-width="7"/><path d="M130 15h12l18 30 18-30h12v35h-10V30l-16 24h-8l-16-24v20h-10z" fill="#123"/></svg>';

async function openStandards(page: Page): Promise<Locator> {
  await page.keyboard.press("Control+,");
  const room = page.getByRole("region", { name: "Standards and catalogues" });
  await room.waitFor();
  return room;
}

async function chooseFile(page: Page, button: Locator, name: string, content: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), button.click()]);
  await chooser.setFiles({ name, mimeType: "", buffer: Buffer.from(content) });
}

test("a company's logo, weights and layer names are on its sheets, and by a template on those of a new route", async () => {
  const page = await machine().openPage(await machine().start());
  await openDemoRoute(page);
  const room = await openStandards(page);
  await chooseFile(page, room.getByRole("button", { name: "Choose a picture" }), "logo.svg", svg);
  await room.getByRole("img", { name: "The company's logo" }).waitFor();
  await room.getByLabel("Lines of what is new").selectOption("0.7 mm");
  const layers = room.getByRole("group", { name: "Names of layers" });
  await layers.getByLabel("Strand").click();
  await page.keyboard.type("c-strn");
  await page.keyboard.press("Tab");
  await page.keyboard.type("poles");
  await layers.getByRole("alert").getByText("the name of two layers").waitFor();
  await page.keyboard.press("Escape");
  await layers.getByRole("alert").waitFor({ state: "detached" });
  await expect.poll(() => layers.getByLabel("Strand").inputValue()).toBe("C-STRN");
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    room.getByRole("button", { name: "Export as a template" }).click(),
  ]);
  const template = readFileSync(await saved.path(), "utf8");

  await page.getByRole("button", { name: "Preview sheets" }).click();
  const index = page.getByRole("navigation", { name: "Sheets" });
  await index
    .getByRole("button", { name: /Strand plan/ })
    .first()
    .click();
  const paper = page.locator(".paper svg");
  await paper.locator('g[data-layer="C-STRN"] path[stroke-width="0.7"]').first().waitFor({ state: "attached" });
  expect(await paper.locator("image").count()).toBe(1);
  expect(await paper.locator('g[data-layer="poles"]').count()).toBe(1);

  await page.keyboard.press("Control+o");
  await page.getByRole("button", { name: "Start a new route" }).click();
  const form = page.getByRole("form", { name: "Start a new route" });
  await chooseFile(
    page,
    form.getByRole("button", { name: "Start from a template" }),
    saved.suggestedFilename(),
    template,
  );
  await form.getByText("Starts with the standards, catalogues and logo of marrow-bend standards.json.").waitFor();
  await form.getByLabel("Route name").fill("Elm");
  await form.getByRole("button", { name: "jobs/" }).click();
  await form.getByRole("button", { name: "Make the route" }).click();
  await page.getByRole("heading", { level: 1, name: "Elm" }).waitFor();
  await openStandards(page);
  await room.getByRole("img", { name: "The company's logo" }).waitFor();
  expect(await room.getByLabel("Lines of what is new").inputValue()).toBe("0.7");
  expect(await layers.getByLabel("Strand").inputValue()).toBe("C-STRN");
});

test("a picture that cannot be a logo is refused in plain words; one that was taken is given up, and taken back by undo", async () => {
  const page = await machine().openPage(await machine().start());
  await openDemoRoute(page);
  const room = await openStandards(page);
  const shown = room.getByRole("img", { name: "The company's logo" });
  const choose = room.getByRole("button", { name: "Choose a picture" });
  await chooseFile(page, choose, "logo.svg", svg.replace("</svg>", "<text>Marrow</text></svg>"));
  await page.getByRole("alert").getByText("The SVG has lettering in it").waitFor();
  await chooseFile(page, choose, "logo.svg", svg);
  await shown.waitFor();
  await room.getByRole("button", { name: "Do without" }).click();
  await shown.waitFor({ state: "detached" });
  await page.keyboard.press("Control+z");
  await shown.waitFor();
});

test("names typed faster than the host answers are all kept", async () => {
  const page = await machine().openPage(await machine().start());
  await openDemoRoute(page);
  const room = await openStandards(page);
  let answer = (): void => {};
  const isTyped = new Promise<void>((resolve) => {
    answer = resolve;
  });
  await page.route("**/call/edit.run", async (route) => {
    await isTyped;
    await route.continue();
  });
  const layers = room.getByRole("group", { name: "Names of layers" });
  await layers.getByLabel("Cables").click();
  for (const name of ["c-cabl", "c-strn", "c-coil"]) {
    await page.keyboard.type(name);
    await page.keyboard.press("Tab");
  }
  answer();
  for (const [layer, name] of [
    ["Cables", "C-CABL"],
    ["Strand", "C-STRN"],
    ["Coils", "C-COIL"],
  ] as const)
    await expect.poll(() => layers.getByLabel(layer).inputValue()).toBe(name);
});

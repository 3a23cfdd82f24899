import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { demoSeed, makeDemo as makeDemoLists } from "../../assets/demo/makeDemo.ts";
import { launchChromium } from "./chromium.ts";
import { pointOf } from "./diagram.ts";
import { dropFile, type Machine, makeMachines, openDemoRoute, type Program } from "./programs.ts";

const slow = { timeout: 30_000 };
const reason = "This route may be looked at only.";

let browser: Browser;
let machines: Awaited<ReturnType<typeof makeMachines>>;
let machine: Machine;
let field: Program;
let office: Program;
/** The window of the second person. */
let page: Page;

beforeAll(async () => {
  [browser, machines] = await Promise.all([launchChromium(), makeMachines()]);
});
afterAll(async () => {
  await browser.close();
  machines.remove();
});
beforeEach(async () => {
  machine = machines.setUp(browser);
  field = await machine.start("Field");
  await openDemoRoute(await machine.openPage(field));
  office = await machine.start("Office");
  page = await machine.openPage(office);
  await openDemoRoute(page);
});
afterEach(() => machine.close());

function said(): Promise<string | null> {
  return page.locator("output.said").textContent();
}

test("a second person is told who has the route and since when, and the edit controls are disabled with the reason until it is free", async () => {
  const banner = page.getByRole("region", { name: "State of the route" });
  await banner.getByText(/^Field has the file open on \S+, process \d+, since \d\d:\d\d/).waitFor();
  const layOut = page.getByRole("button", { name: "Lay out terminals", exact: true });
  expect(await layOut.getAttribute("aria-disabled")).toBe("true");
  await layOut.focus();
  expect(await page.getByRole("tooltip").textContent()).toContain(reason);
  // what only explains changes nothing and stays
  const mends = page.locator(".finding-fixes button:not([aria-expanded])");
  expect(await mends.count()).toBeGreaterThan(0);
  expect(await mends.evaluateAll((all) => all.filter((one) => !one.matches(":disabled")))).toEqual([]);
  await field.host.call("files.close", { routeId: "route-1" });
  await banner.getByRole("button", { name: "Look again" }).click();
  await expect.poll(() => layOut.getAttribute("aria-disabled"), slow).toBe("false");
  expect(await mends.evaluateAll((all) => all.filter((one) => one.matches(":disabled")))).toEqual([]);
});

test("while a route may be looked at only, panels, standards, tables, import and the diagram refuse every edit and say why", async () => {
  const before = await routeAt(office);
  const side = page.getByRole("complementary", { name: "What is chosen" });
  const [terminal] = rowsOf(before, "terminal");
  if (!terminal) throw new Error("the demo route has no terminal");

  await page.keyboard.press("Control+k");
  await page.keyboard.type(`Terminal ${terminal.name}`);
  await page.getByRole("dialog").getByRole("option").first().waitFor();
  await page.keyboard.press("Enter");
  await side.getByRole("heading", { name: `Terminal ${terminal.name}` }).waitFor();
  const fields = side.locator(".fields").locator("input, select");
  expect(await fields.count()).toBeGreaterThan(0);
  expect(await fields.evaluateAll((all) => all.filter((one) => !one.matches(":disabled, :read-only")))).toEqual([]);

  const { x, y } = await pointOf(page, terminal.id);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 30, y + 30, { steps: 5 });
  await page.mouse.up();
  await expect.poll(said).toBe(reason);

  await page.keyboard.press("Control+,");
  const standards = page.getByRole("region", { name: "Standards and catalogues" });
  await standards.getByRole("textbox").first().waitFor();
  const values = standards.locator(".setting").locator("input, select");
  expect(await values.evaluateAll((all) => all.filter((one) => !one.matches(":disabled, :read-only")))).toEqual([]);
  await standards.getByRole("button", { name: "Strand", exact: true }).click();
  for (const name of ["Add a row", "Copy the row", "Remove the row", "Import a template"]) {
    expect(await standards.getByRole("button", { name }).isDisabled()).toBe(true);
  }
  await standards.getByRole("button", { name: "Back to the diagram" }).click();

  await page.keyboard.press("Control+g");
  await page.getByRole("tab", { name: "Poles", exact: true }).click();
  const grid = page.getByRole("grid", { name: "Poles", exact: true });
  await grid.focus();
  await page.keyboard.type("Z");
  await expect.poll(said).toBe(reason);
  expect(await grid.getByRole("textbox").count()).toBe(0);
  await page.keyboard.press("Control+g");

  await dropFile(page, "poles.csv", Buffer.from(makeDemoLists(demoSeed + 1).poles));
  const panel = page.getByRole("complementary", { name: "Import" });
  await panel.getByRole("table", { name: "First rows" }).waitFor();
  const take = panel.getByRole("button", { name: /^Take/ });
  expect(await take.getAttribute("aria-disabled")).toBe("true");
  await panel.getByText(reason).waitFor();
  expect(await routeAt(office)).toEqual(before);
});

type Tables = Readonly<Record<string, readonly { readonly id: string; readonly name: string }[]>>;

async function routeAt({ host }: Program): Promise<Tables> {
  const read = await host.call("route.read", { routeId: "route-1" });
  if (!read.ok) throw new Error(read.fault.what);
  return (read.value as { tables: Tables }).tables; // the reply of that method
}

function rowsOf(tables: Tables, name: string) {
  return tables[name] ?? [];
}

import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { selection } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import { bring, events, fileOf, longestWay } from "./traceFiles.ts";

const { opened } = eachOnDemo(async ({ page }) => {
  await page.keyboard.press("Control+Shift+f");
  await page.getByRole("region", { name: "Traces", exact: true }).waitFor();
  await page.getByLabel("Brought by").fill("R. Vance");
});

const hand = (page: Page) => page.locator("[data-trace]");

describe("the traces", () => {
  test("are brought in and matched to their fiber; an event leads to its place, and the place to its event", async () => {
    const { page, session } = opened();
    await page.getByText("No traces are kept with this route yet.").waitFor();
    await bring(page).setInputFiles([fileOf(session.plant, "a.sor")]);
    await events(page).getByText("splice at closure").waitFor();
    const { way } = longestWay(session.plant);
    const splice = way.landmarks.find((one) => one.kind === "splice");
    await events(page)
      .getByRole("button", { name: /^splice at closure/ })
      .click();
    await expect.poll(() => selection(page)).toEqual([splice?.row.id]);
    await page.keyboard.press("Control+k");
    await page.keyboard.type(`Terminal ${session.plant.row("terminal", way.landmarks.at(-1)?.row.id ?? "")?.name}`);
    await page.getByRole("dialog").getByRole("option").first().waitFor();
    await page.keyboard.press("Enter");
    await expect
      .poll(() => events(page).locator("tr[aria-current=true]").textContent())
      .toContain("splitter at terminal");
  });

  test("are brought by the person at the window; whom the instrument names as its operator is told beside", async () => {
    const { page, session } = opened();
    const name = page.getByLabel("Brought by");
    await name.fill("");
    await bring(page).setInputFiles([fileOf(session.plant, "a.sor")]);
    await page.getByText("Write first who brings them").waitFor();
    expect(session.route().trace.size).toBe(0);
    await name.focus();
    await page.keyboard.type("M. Okafor");
    await bring(page).setInputFiles([fileOf(session.plant, "a.sor")]);
    await page.getByText(/^Brought by M\. Okafor, .* Operator as the instrument tells: Operator\.$/).waitFor();
    expect([...session.route().trace.values()].map((one) => one.by)).toEqual(["M. Okafor"]);
  });

  test("tell the distance and the loss between two marks, and are walked by keys", async () => {
    const { page, session } = opened();
    await bring(page).setInputFiles([fileOf(session.plant, "a.sor")]);
    await events(page).getByText("splice at closure").waitFor();
    await hand(page).focus();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("b");
    await page.keyboard.press("ArrowDown");
    await page.getByText(/^A to B: [\d,]+ ft, [\d.]+ dB$/).waitFor();
    expect(await events(page).locator("tr[aria-current=true]").count()).toBe(1);
  });

  test("ask whose a trace is where nothing says so, and match it when it is said", async () => {
    const { page, session } = opened();
    const { cable, fiber } = longestWay(session.plant);
    await bring(page).setInputFiles([fileOf(session.plant, "x.sor", { cableId: "", fiberId: "", locationA: "" })]);
    const form = page.locator("form.traces-give");
    await form.getByLabel("Cable").selectOption(cable.id);
    await form.getByLabel("Fiber").fill(String(fiber));
    await form.getByLabel("Taken from").selectOption("feed");
    await form.getByRole("button", { name: "Say so" }).click();
    await events(page).getByText("splice at closure").waitFor();
    await expect.poll(() => form.isVisible()).toBe(false);
    expect([...session.route().trace.values()][0]).toMatchObject({ cableId: cable.id, fiber, fromEnd: "feed" });
  });

  test("that nobody has placed are numbered on from one and told as one step, which one undo takes back", async () => {
    const { page, session } = opened();
    const { cable } = longestWay(session.plant);
    const whose = { cableId: "", fiberId: "", locationA: "" };
    const names = ["x2.sor", "x10.sor", "x3.sor", "x1.sor"];
    await bring(page).setInputFiles(
      names.map((name, seed) => fileOf(session.plant, name, { ...whose, seed: seed + 1 })),
    );
    const form = page.getByRole("form", { name: "Whose traces are these?" });
    const say = form.getByRole("button", { name: /^Say so/ });
    await form.getByLabel("Cable, x1.sor").waitFor();
    expect(await say.isDisabled()).toBe(true);
    const cables = form.getByLabel("Cable, x1.sor");
    await cables.selectOption(cable.id);
    await cables.focus();
    await page.keyboard.press("Tab");
    await page.keyboard.type("5");
    await page.keyboard.press("Tab");
    await page.keyboard.type("the hub");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await expect.poll(() => form.getByLabel("Fiber, x10.sor").inputValue()).toBe("8");
    // what the hand writes afterwards holds; one left open stays for later
    await form.getByLabel("Fiber, x3.sor").fill("");
    await say.click();
    const fibers = () =>
      Object.fromEntries([...session.route().trace.values()].map(({ fileName, fiber }) => [fileName, fiber]));
    await expect.poll(fibers).toEqual({ "x1.sor": 5, "x2.sor": 6, "x3.sor": null, "x10.sor": 8 });
    await page.getByRole("heading", { name: "Whose trace is this?" }).waitFor();
    await page.locator("[data-trace]").focus();
    await page.keyboard.press("Control+z");
    await expect.poll(() => Object.values(fibers())).toEqual([null, null, null, null]);
    await form.getByLabel("Cable, x10.sor").waitFor();
  });

  test("tell where a fiber is broken, as a finding too", async () => {
    const { page, session } = opened();
    const { way } = longestWay(session.plant);
    await bring(page).setInputFiles([fileOf(session.plant, "broken.sor", { brokenM: way.lengthM * 0.6 })]);
    await events(page)
      .getByText(/the fiber ends, give or take \d+ ft/)
      .waitFor();
    await page.getByRole("button", { name: "Put the traces away" }).last().click();
    await events(page).waitFor({ state: "detached" });
    const finding = page.locator(".findings").getByText(/ ends .* past pole .*, give or take/);
    await finding.first().click();
    // the finding leads to the trace and to the pole
    await events(page).locator("tr[aria-current=true]").getByText("the fiber ends").waitFor();
    expect(session.route().pole.has((await selection(page))[0] ?? "")).toBe(true);
  });

  test("of a damaged file show what could be read, and say what could not", async () => {
    const { page, session } = opened();
    const file = fileOf(session.plant, "cut.sor");
    const cut = { ...file, buffer: file.buffer.subarray(0, file.buffer.length - 3000) };
    await bring(page).setInputFiles([cut]);
    await page.getByText(/points of the curve are missing/).waitFor();
    await events(page).getByText("splice at closure").waitFor();
  });
});

import { readFileSync } from "node:fs";
import { unzipSync } from "fflate";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Route } from "../../core/model/route.ts";
import { closedOut } from "../fixtures/route/closedOut.ts";
import { difference } from "../property/dbRoutes.ts";
import { selection } from "./diagram.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { opened } = eachOnDemo();

const panelOf = (page: Page) => page.getByRole("complementary", { name: "Sign-off" });
const signed = () => [...opened().session.route().signOff.values()];

/** Closes the demo out, all but what is left open, and shows it in the window. */
async function closeOut(leave: (route: Route) => Route = (route) => route): Promise<void> {
  const { page, session } = opened();
  const done = leave(closedOut(session.route()));
  expect(session.take("Close out", difference(session.route(), done)).ok).toBe(true);
  await page.reload();
  await page.locator("canvas").first().waitFor();
}

async function sign(page: Page, stage: string, by: string): Promise<void> {
  const count = signed().length;
  await panelOf(page)
    .getByRole("button", { name: `Sign for the route as ${stage}` })
    .press("Enter");
  await page.keyboard.type(by);
  await page.keyboard.press("Enter");
  await expect.poll(() => signed().length).toBe(count + 1);
  await panelOf(page).getByRole("form").waitFor({ state: "detached" });
}

test("the gates of a route just drawn are shut, each leads to what is missing, and nobody can sign", async () => {
  const { page } = opened();
  await page.keyboard.press("Control+Shift+g");
  const built = panelOf(page).getByRole("region", { name: "Built" });
  await built
    .getByText(/^\d+ missing$/)
    .first()
    .waitFor();
  expect(await built.getByRole("button", { name: "Sign for the route as built" }).isDisabled()).toBe(true);
  await built
    .getByRole("button", { name: /^pole / })
    .first()
    .click();
  await expect.poll(async () => (await selection(page)).length).toBe(1);
});

test("a route closed out is signed for, frozen, and opened again under a revision", async () => {
  const { page, session } = opened();
  const [terminal] = session.route().terminal.values();
  if (!terminal) throw new Error("the demo route has no terminal");
  await closeOut();
  await page.keyboard.press("Control+Shift+g");
  await sign(page, "built", "M. Okafor");
  await sign(page, "accepted", "L. Brandt");
  const digest = signed()[1]?.digest ?? "";
  await panelOf(page).getByText(digest).waitFor();
  const banner = page.getByRole("region", { name: "State of the route" });
  await banner.getByText(/was signed for as accepted by L\. Brandt/).waitFor();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+z");
  await expect.poll(() => page.locator("output.said").textContent()).toContain("frozen");
  expect(signed().length).toBe(2);
  const layOut = page.getByRole("button", { name: "Lay out terminals", exact: true });
  expect(await layOut.getAttribute("aria-disabled")).toBe("true");
  await panelOf(page).getByRole("button", { name: "Open the signed route again" }).press("Enter");
  await page.keyboard.type("Ann");
  await page.keyboard.press("Enter");
  await panelOf(page).getByRole("alert").waitFor();
  await panelOf(page).getByLabel("Reason").fill("A pole was moved");
  await page.keyboard.press("Enter");
  await panelOf(page)
    .getByText(/^Opened again \S+ by Ann: A pole was moved$/)
    .first()
    .waitFor();
  await expect.poll(() => layOut.getAttribute("aria-disabled")).toBe("false");
  expect([...session.route().revision.values()].map(({ letter, reason }) => [letter, reason])).toEqual([
    ["A", "A pole was moved"],
  ]);
});

test("one reading taken away shuts its gate again, and the gate tells which", async () => {
  const { page } = opened();
  await closeOut((route) => {
    const reading = new Map(route.reading);
    const offset = [...reading.values()].find(({ what }) => what === "offset");
    reading.delete(offset?.id ?? "");
    return { ...route, reading };
  });
  await page.keyboard.press("Control+Shift+g");
  const built = panelOf(page).getByRole("region", { name: "Built" });
  await built.getByText("1 missing").waitFor();
  await built.getByRole("button", { name: /^terminal .*: from the pole$/ }).click();
  await expect.poll(async () => (await selection(page)).length).toBe(1);
});

test("what was built is delivered as one archive", { timeout: 240_000 }, async () => {
  const { page } = opened();
  await page.keyboard.press("Control+Shift+g");
  const waited = page.waitForEvent("download", { timeout: 200_000 });
  await panelOf(page).getByRole("button", { name: "Deliver what was built" }).press("Enter");
  const download = await waited;
  expect(download.suggestedFilename()).toMatch(/ delivery\.zip$/);
  const names = Object.keys(unzipSync(new Uint8Array(readFileSync(await download.path()))));
  expect(names).toContain("manifest.json");
  expect(names.some((name) => name.endsWith("as built.pdf"))).toBe(true);
});

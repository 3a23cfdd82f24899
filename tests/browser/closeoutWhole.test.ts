import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { builtThings } from "../../core/closeout/board.ts";
import { type PacketFile, packetFile } from "../../core/closeout/packet/packetFile.ts";
import type { Row } from "../../core/model/tables.ts";
import { subjectsText } from "../../core/rules/finding.ts";
import { closedOut } from "../fixtures/route/closedOut.ts";
import { eachOnDemo } from "./eachOnDemo.ts";
import { givePacket, offsetOf, openPacket, packetsOf, writeBack } from "./packetSteps.ts";
import { bring, events, fileOf } from "./traceFiles.ts";

const { opened } = eachOnDemo();
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "strandwright-closeout-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const revisions = (page: Page) => page.getByRole("complementary", { name: "Revisions" });
const signOff = (page: Page) => page.getByRole("complementary", { name: "Sign-off" });
const grid = (page: Page) => page.getByRole("grid", { name: "Closeout by terminal" });

async function issue(page: Page): Promise<void> {
  await page.keyboard.press("Control+Shift+e");
  await revisions(page).getByRole("button", { name: "Issue a revision" }).press("Enter");
  const form = revisions(page).getByRole("form", { name: "Issue a revision" });
  await page.keyboard.type("For construction");
  await form.getByLabel("By", { exact: true }).fill("M. Okafor");
  await page.keyboard.press("Enter");
  await form.waitFor({ state: "detached" });
}

/** A crew reads one offset by hand and writes its file. */
async function readBy(page: Page, crew: string, offset: string, said: string[]): Promise<string> {
  const packet = await openPacket(page, await givePacket(page, crew, folder), said);
  await packet.getByLabel("Your name").fill(`${crew} hand`);
  await offsetOf(packet).fill(offset);
  const path = await writeBack(packet, `${crew}.json`, folder);
  await packet.close();
  return path;
}

/** The rest of what a crew of many days would have read, as it was drawn, written into its file. */
function readTheRest(path: string, readings: Iterable<Row<"reading">>): void {
  const file: PacketFile = packetFile.parse(JSON.parse(readFileSync(path, "utf8")));
  const isRead = ({ what, subjectId }: { what: string; subjectId: string }) =>
    file.readings.some((one) => one.what === what && one.subjectId === subjectId);
  const rest = [...readings]
    .filter((one) => !isRead(one))
    .map(({ id: _id, packetId: _packetId, madeOn: _madeOn, value, text, by, atIso, ...asked }) => ({
      ...asked,
      before: null,
      sent: [],
      after: { value, text, by, atIso },
    }));
  writeFileSync(path, JSON.stringify({ ...file, readings: [...file.readings, ...rest] }));
}

/** Marks every row of the board as tested, by its readings' head. */
async function markTested(page: Page): Promise<void> {
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("d");
  await page.getByLabel("Read and signed by").fill("R. Vance");
  await grid(page).focus();
  await page.keyboard.press("ArrowUp");
  const rowCount = Number(await grid(page).getAttribute("aria-rowcount")) - 2;
  for (let row = 0; row < rowCount; row += 1) {
    await page.keyboard.press("Enter");
    const form = page.getByRole("region", { name: /^Readings: / });
    const tested = form.getByRole("group", { name: /^Everything in / }).getByRole("button", { name: "tested" });
    await tested.click();
    await form.getByRole("button", { name: "Back to the board" }).click();
    await page.keyboard.press("ArrowDown");
  }
  const { plant } = opened().session;
  await expect.poll(() => builtThings(plant).every((one) => one.standing.state === "tested")).toBe(true);
}

async function sign(page: Page, stage: string): Promise<void> {
  const { session } = opened();
  const count = session.route().signOff.size;
  await signOff(page)
    .getByRole("button", { name: `Sign for the route as ${stage}` })
    .press("Enter");
  await page.keyboard.type("M. Okafor");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.route().signOff.size).toBe(count + 1);
  await signOff(page).getByRole("form").waitFor({ state: "detached" });
}

test("the demo route is closed out: issued, read by two crews who differ once, traced, mended, signed for", async () => {
  const { page, session } = opened();
  await issue(page);
  await page.keyboard.press("Control+Shift+k");
  const said: string[] = [];
  const north = await readBy(page, "North", "36 in", said);
  const south = await readBy(page, "South", "37 in", said);
  readTheRest(south, closedOut(session.route()).reading.values());
  await packetsOf(page).getByLabel("Bring packets back").setInputFiles([north, south]);
  const rival = packetsOf(page).getByRole("listitem", { name: /^From the pole's centre line, / });
  await rival.getByRole("button", { name: /^Take what South brought/ }).press("Enter");
  await rival.waitFor({ state: "detached" });
  expect(said).toEqual([]);

  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+Shift+f");
  await page.getByLabel("Brought by").fill("R. Vance");
  await bring(page).setInputFiles([fileOf(session.plant, "a.sor")]);
  await events(page).getByText("splice at closure").waitFor();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("Control+Shift+f");

  await markTested(page);
  await page.getByRole("tab", { name: "Punch list" }).click();
  await page.getByRole("button", { name: /^Put on the list: / }).click();
  await page.getByLabel("What", { exact: true }).fill("Cap is missing");
  await page.keyboard.press("Enter");
  await expect.poll(() => session.route().punch.size).toBe(1);

  const errors = session.findings().filter((one) => one.severity === "error" && one.waiverId === null);
  for (const [index, { ruleId, subjects }] of errors.entries())
    session.run("finding.waive", {
      waiverId: `agreed-${index}`,
      ruleId,
      subjects: subjectsText(subjects),
      reason: "Agreed with the owner",
      by: "M. Okafor",
      atIso: "2030-05-02",
    });
  await page.reload();
  await page.locator("canvas").first().waitFor();
  await page.keyboard.press("Control+Shift+g");
  await sign(page, "built");
  await sign(page, "tested");
  const accepted = signOff(page).getByRole("button", { name: "Sign for the route as accepted" });
  expect(await accepted.isDisabled()).toBe(true);
  await signOff(page)
    .getByRole("button", { name: /Cap is missing/ })
    .click();
  await page.locator("[data-diagram]").focus();
  await page.keyboard.press("d");
  await page.getByRole("tab", { name: "Punch list" }).click();
  await page.getByLabel("Read and signed by").fill("R. Vance");
  await page.getByRole("table", { name: "Punch list" }).getByRole("button").first().click();
  await page.getByRole("region", { name: "Punch 1" }).getByLabel("How it was mended").fill("Cap put on");
  await page.keyboard.press("Enter");
  await expect.poll(() => accepted.isDisabled()).toBe(false);
  await sign(page, "accepted");
  await page
    .getByRole("region", { name: "State of the route" })
    .getByText(/was signed for as accepted/)
    .waitFor();
}, 240_000);

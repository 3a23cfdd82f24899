import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import type { Fault } from "../../core/model/result.ts";
import { launchChromium } from "./chromium.ts";
import { selection } from "./diagram.ts";
import { faultOf, faultTable } from "./faultTable.ts";
import { type Demo, makeDemo, type OpenWindow } from "./openWindow.ts";

let browser: Browser;
let demo: Demo;
let opened: OpenWindow;
let folder: string;

beforeAll(async () => {
  [browser, demo] = await Promise.all([launchChromium(), makeDemo()]);
});
afterAll(async () => {
  await browser.close();
  demo.remove();
});
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "strandwright-faults-"));
  opened = await demo.open(browser, { permissions: ["clipboard-read", "clipboard-write"] });
});
afterEach(async () => {
  await opened.close();
  rmSync(folder, { recursive: true, force: true });
});

const alertOf = (page: Page) => page.locator('.alert[role="alert"]');
const edits = "**/call/edit.run";

/** Has the host refuse every edit for the fault given last. */
async function refuseEdits(page: Page): Promise<(fault: Fault) => Promise<void>> {
  let refusal: Fault | null = null;
  await page.route(edits, (route) => route.fulfill({ json: { ok: false, fault: refusal } }));
  return async (fault) => {
    refusal = fault;
    await page.locator('.bar button[aria-label^="Switch to"]').click();
    await alertOf(page).waitFor();
  };
}

/** What each mend leads to; a mend without an entry fails the walk. */
const leadsTo: readonly (readonly [name: RegExp, seen: (page: Page) => Promise<unknown>])[] = [
  [/^Read the route again$/, (page) => page.getByText("This is the route as the file holds it.").waitFor()],
  [/^Load the window again$/, (page) => page.locator("canvas").first().waitFor()],
  [/^Choose another file$/, (page) => page.getByRole("region", { name: "Open or start a route" }).waitFor()],
  [/^(Show copies and backups|Save a copy elsewhere)$/, (page) => page.locator("aside.copies").waitFor()],
  [/^Open the standards$/, (page) => page.getByRole("region", { name: "Standards and catalogues" }).waitFor()],
  [/^Open the sign-off$/, (page) => page.getByRole("complementary", { name: "Sign-off" }).waitFor()],
  [/^Bring in lists$/, (page) => page.getByLabel("What the file lists").waitFor()],
  [/^Show /, (page) => expect.poll(async () => (await selection(page)).length).toBe(1)],
];

test("every fault names what it is about in plain words, and offers what to do about it", {
  timeout: 400_000,
}, async () => {
  const { page, session } = opened;
  const refuseWith = await refuseEdits(page);
  const pressed = new Set<string>();
  for (const code of Object.keys(faultTable)) {
    const fault = await faultOf(code, session, folder);
    await refuseWith(fault);
    const alert = alertOf(page);
    const text = (await alert.locator("p").textContent()) ?? "";
    expect(text, code).toMatch(/^\S.*[.] /);
    expect(text, code).toContain(fault.mend);
    expect(text, code).not.toMatch(/undefined|NaN|\[object|Error:|\bat .*:\d+:\d+|T\d\d:\d\d/);
    expect(text.replace(/\S*\/\S+/g, ""), `${code} names rows as people do`).not.toMatch(
      /\b(pole|span|terminal|cable|coil|unit|drop|use|splitter|closure|catalogue|route|edit|files)[-.][a-z0-9]/,
    );
    const names = await alert.locator("button").allTextContents();
    expect(names, code).toContain("Copy the message");
    const [name = ""] = names;
    if (name === "Copy the message" || pressed.has(name.replace(/^Show (?!copies).*/, "Show"))) {
      await alert.locator('button[aria-label="Put the message away"]').click();
      continue;
    }
    pressed.add(name.replace(/^Show (?!copies).*/, "Show"));
    const lead = leadsTo.find(([mend]) => mend.test(name));
    if (!lead) throw new Error(`nobody knows where "${name}" leads`);
    await alert.getByRole("button", { name }).click();
    await expect.poll(() => page.getByRole("alert").allTextContents().then(String)).not.toContain(fault.mend);
    await lead[1](page);
    await page.reload();
    await page.locator("canvas").first().waitFor();
  }
  expect([...pressed].sort()).toEqual([
    "Bring in lists",
    "Choose another file",
    "Load the window again",
    "Open the sign-off",
    "Open the standards",
    "Read the route again",
    "Save a copy elsewhere",
    "Show",
    "Show copies and backups",
  ]);
});

test("the message is copied whole, with what helps whoever mends the program", async () => {
  const { page, session } = opened;
  const fault = await faultOf("program-error", session, folder);
  await (await refuseEdits(page))(fault);
  await alertOf(page).getByRole("button", { name: "Copy the message" }).click();
  await page.getByText("The message is copied.").waitFor();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toContain(fault.what);
  expect(copied).toContain("program-error");
});

test("a host that goes away, and one that answers strangely, are told, and asking again works once it is back", async () => {
  const { page } = opened;
  const units = () => page.getByRole("button", { name: /^Switch to / }).click();
  await page.route("**/call/**", (route) => route.abort());
  await units();
  await alertOf(page).getByText("The program behind this window does not answer.").waitFor();
  await alertOf(page).getByRole("button", { name: "Try again" }).click();
  await alertOf(page).getByText("The program behind this window does not answer.").waitFor();
  await page.unroute("**/call/**");
  await alertOf(page).getByRole("button", { name: "Try again" }).click();
  await alertOf(page).waitFor({ state: "detached" });
  await page.route(edits, (route) => route.fulfill({ json: { well: "hello" } }));
  await units();
  await alertOf(page).getByText("answered in a form this window does not know").waitFor();
  await alertOf(page).getByRole("button", { name: "Load the window again" }).isVisible();
});

test("a file dropped on the window that cannot be taken in is named", async () => {
  const { page } = opened;
  const drop = (name: string) =>
    page.evaluate((fileName) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File(["words"], fileName));
      const wish = { dataTransfer, bubbles: true, cancelable: true };
      document.body.dispatchEvent(new DragEvent("dragover", wish));
      document.body.dispatchEvent(new DragEvent("drop", wish));
    }, name);
  await drop("letter.docx");
  expect(await alertOf(page).locator("p").textContent()).toBe(
    "That kind of file cannot be taken in. Drop a CSV, XLSX, GeoJSON, KML or GPX list, or a route file. letter.docx",
  );
  await drop("other town.strand");
  await expect.poll(() => alertOf(page).locator("p").textContent()).toContain("other town.strand");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+k");
  await page.keyboard.type("close the route");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Strandwright", level: 1 }).waitFor();
  await drop("poles.csv");
  await alertOf(page).getByText("There is no route to take the list into.").waitFor();
});

/** Codes no test of this file brings about, each with why. */
const elsewhere: Readonly<Record<string, string>> = {
  "bad-binding": "the program does not start, so there is no window",
  "bad-rows": "told by the import panel beside the rows themselves; tests/browser/import.test.ts",
  "bad-figure": "the batch door alone takes figures by name; tests/contract/batch.test.ts",
  "no-figure": "the batch door alone takes figures by name; tests/contract/batch.test.ts",
  "is-a-route": "the batch door alone writes files of other kinds",
  "is-a-file": "the batch door alone is told a folder to write to; tests/contract/batch.test.ts",
  "no-traces": "the batch door alone takes a folder of traces; tests/contract/traces.test.ts",
  "no-sheets": "the batch door alone asks for sheets by name; tests/contract/batch.test.ts",
  "broken-reference": "the edits refuse first; tests/contract/db/opening.test.ts",
  "journal-broken": "told by the banner of a file that may be looked at only; tests/contract/signed.test.ts",
  "rows-changed": "told by the banner of a file that may be looked at only; tests/contract/signed.test.ts",
  "signed-already": "a route closed out; tests/unit/edits/signOff.test.ts",
  "older-file": "a file of an older version that another program holds; no test brings it about yet",
  "no-backup": "a copy that was deleted while its list was shown; no test brings it about yet",
  "dead-end": "strand of two sections that meet at the pole; tests/unit/edits/lines.test.ts",
  outside: "a link that leads out of the folders listed; tests/contract/files.test.ts",
  "no-trial": "a trial of before the latest; tests/contract/tryLayout.test.ts",
  stopped: "told as a message: somebody stopped the work, nothing is wrong",
  loop: "a route that is no tree; tests/unit/layout/stringLine.test.ts",
  strung: "a route that is strung by hand; tests/unit/layout/stringLine.test.ts",
  "no-span": "a route without spans; tests/unit/layout/stringLine.test.ts",
  "no-cable": "a span without cable; tests/unit/layout",
  "no-cable-fits": "more fibers than the largest cable has; no test brings it about yet",
  "no-model": "a catalogue without terminals; tests/unit/layout",
  "not-spliced": "a lateral cable that is spliced to nothing; no test brings it about yet",
};

test("no code of the program is missing from the walk without a reason", () => {
  const root = resolve(import.meta.dirname, "../..");
  const sources = ["core/edits", "core/layout", "db", "electron/host", "renderer/app"].flatMap((one) =>
    filesBelow(join(root, one)),
  );
  const codes = new Set(
    sources
      .filter((path) => !path.includes("readTable"))
      .flatMap((path) => [
        ...readFileSync(path, "utf8").matchAll(/\bfail(?:<[^>]*>)?\(\s*"([a-z-]+)"|\bcode: "([a-z-]+)"/g),
      ])
      .map((match) => match[1] ?? match[2] ?? ""),
  );
  const inWalk = [...Object.keys(faultTable), "host-away", "strange-answer", "not-a-list", "no-place", "no-route"];
  const missing = [...codes].filter((code) => !inWalk.includes(code) && elsewhere[code] === undefined);
  expect(missing.sort()).toEqual([]);
});

function filesBelow(path: string): readonly string[] {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path).flatMap((name) => filesBelow(join(path, name)));
}

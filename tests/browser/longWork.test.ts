import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { drawPdf } from "../../electron/host/drawPdf.ts";
import { runJobHere } from "../../electron/host/jobs.ts";
import type { Session } from "../../electron/host/session.ts";
import { longRoute } from "../bench/longRoute.ts";
import { eachOnDemo } from "./eachOnDemo.ts";

const { openRows } = eachOnDemo();

/** Long enough that each part of the work can be seen and stopped. */
const poleCount = 150;
const timeout = 400_000;
const route = longRoute(resolve(import.meta.dirname, "../../assets"), poleCount);

const told = (page: Page, words: RegExp) => page.locator(".job").getByText(words);
const isOver = (page: Page) => page.getByRole("progressbar").waitFor({ state: "detached" });
const status = (page: Page) => page.getByRole("status").first().textContent();

test(
  "while sheets are prepared and drawn the window says how far it is and takes edits; cancelled, the diagram stays; asked again, they come",
  async () => {
    const { page, session, complaints, close } = await openRows(route);
    await page.getByRole("button", { name: "Preview sheets" }).click();
    await told(page, /^Preview sheets: [A-Z][a-z ]+, kind \d+ of \d+$/).waitFor({ timeout });
    await page
      .getByRole("button", { name: /^Set a guy against it/ })
      .first()
      .click();
    await expect.poll(() => session.route().guy.size).toBe(1);
    await told(page, /^Preview sheets: sheet \d+ of \d+$/).waitFor({ timeout });
    await page.getByRole("button", { name: "Cancel" }).click();
    await isOver(page);
    expect(await status(page)).toBe("Preview sheets: stopped, nothing was changed.");
    expect(await page.locator(".sheets").count()).toBe(0);
    await page.getByRole("button", { name: "Preview sheets" }).click();
    await page.getByRole("img", { name: "Sheet 1, Cover" }).locator("svg").waitFor({ timeout });
    await page.getByRole("button", { name: "Next sheet" }).click();
    await page.getByRole("img", { name: /^Sheet 2, Strand plan/ }).waitFor();
    expect(complaints).toEqual([]);
    await close();
  },
  timeout,
);

test(
  "a set cancelled by keyboard while it is written leaves no file; asked again it is the file of the batch, to the byte",
  async () => {
    const { page, session, complaints, close } = await openRows(route);
    const saved: string[] = [];
    page.on("download", (download) => saved.push(download.suggestedFilename()));
    await page.getByRole("button", { name: "Draw the set" }).focus();
    await page.keyboard.press("Enter");
    const cancel = page.getByRole("button", { name: "Cancel" });
    await cancel.focus();
    await told(page, /^Draw the set: writing sheet \d+ of \d+$/).waitFor({ timeout });
    await page.keyboard.press("Enter");
    await isOver(page);
    expect(await status(page)).toBe("Draw the set: stopped, nothing was changed.");
    const [download] = await Promise.all([
      page.waitForEvent("download", { timeout }),
      page.getByRole("button", { name: "Draw the set" }).click(),
    ]);
    expect((await readFile(await download.path())).equals(await drawnByBatch(session))).toBe(true);
    expect(saved).toEqual([download.suggestedFilename()]);
    expect(complaints).toEqual([]);
    await close();
  },
  timeout,
);

async function drawnByBatch(session: Session): Promise<Buffer> {
  const folder = mkdtempSync(join(tmpdir(), "strandwright-batch-"));
  try {
    const path = join(folder, "set.pdf");
    const drawn = await drawPdf(session, runJobHere, { only: null, paper: null, letter: null }, path);
    if (!drawn.ok) throw new Error(drawn.fault.what);
    return readFileSync(path);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { usualChoices } from "../../../core/contract/machineMethods.ts";
import { fail, ok } from "../../../core/model/result.ts";
import { readDressedPage } from "../../../electron/host/dressedPage.ts";

const folder = mkdtempSync(join(tmpdir(), "strandwright-page-"));
const page = join(folder, "index.html");
writeFileSync(page, '<!doctype html>\n<html lang="en"></html>');
afterAll(() => rmSync(folder, { recursive: true }));

test("the page comes in the colours and the size of words that were chosen, before anything on it runs", async () => {
  const chosen = { ...usualChoices, theme: "contrast", textPercent: 125 } as const;
  expect(await readDressedPage(page, async () => ok(chosen))).toBe(
    '<!doctype html>\n<html data-theme="contrast" data-contrast="more" style="font-size: 125%" lang="en"></html>',
  );
});

test("where choices cannot be read the page comes as usual", async () => {
  const refuse = async () => fail<unknown>("unknown-method", "No such thing.", "machine.read", "Update the program.");
  expect(await readDressedPage(page, refuse)).toContain('<html data-theme="system" style="font-size: 100%"');
});

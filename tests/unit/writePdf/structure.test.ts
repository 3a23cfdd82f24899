import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { writePdf } from "../../../electron/host/writePdf.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const lacks = (tool: string) => spawnSync(tool, ["--version"]).error !== undefined;
const noPoppler = lacks("pdfinfo");
const noQpdf = lacks("qpdf");

const set = composeSet(openPlant(smallRoute()), []);
const folder = mkdtempSync(join(tmpdir(), "strandwright-told-"));
const path = join(folder, "set.pdf");
writeFileSync(path, await writePdf(set));
afterAll(() => rmSync(folder, { recursive: true }));

const run = (tool: string, ...words: readonly string[]) =>
  execFileSync(tool, words, { encoding: "latin1", maxBuffer: 64e6 });
/** The structure as poppler reads it: an element a line, deeper ones farther in, attributes and texts under theirs. */
const lines = (noPoppler ? "" : run("pdfinfo", "-struct-text", path))
  .split("\n")
  .map((line) => ({ depth: line.search(/\S/), text: line.trim() }));
const told = lines.map((one) => one.text).join("\n");

describe.skipIf(noPoppler)("what a drawing set tells whoever cannot see it (needs poppler's pdfinfo)", () => {
  it("is a section for each sheet, with the sheet's title for its heading", () => {
    const sections = lines.filter((one) => one.text.startsWith("Sect ")).map((one) => one.text);
    expect(sections).toEqual(set.sheets.map((one) => `Sect "${one.title}"`));
    const headings = lines.flatMap((one, index) => (one.text.startsWith("H1") ? [lines[index + 1]?.text] : []));
    expect(headings).toHaveLength(set.sheets.length);
    expect(headings).toContain(`"Bill of materials"`);
  });

  it("has rows of the same width in every table, empty cells counted", () => {
    const tables = lines.flatMap((one, index) => {
      if (!one.text.startsWith("Table")) return [];
      const end = lines.findIndex((other, at) => at > index && other.depth <= one.depth);
      return [lines.slice(index + 1, end === -1 ? undefined : end)];
    });
    expect(tables.length).toBeGreaterThan(10);
    for (const table of tables) expect(new Set(rowWidths(table)).size).toBe(1);
  });

  it("reads a row of a schedule from left to right", () => {
    expect(told).toMatch(/"Port"[\s\S]*"Living unit"[\s\S]*"House tag"/);
    expect(told).toMatch(/TR\nTD\n"2"\nTD\n"1"\nTD\n"BL"\nTD\n"BL"\nTD\n"2"\nTD\n"2 Test Rd"/);
  });

  it("leaves out border, title block and stamps", () => {
    expect(told).not.toContain("Datum and grid");
    expect(told).not.toContain(`"Checked"`);
  });
});

/** Columns that each row of a table takes. */
function rowWidths(lines: readonly { readonly text: string }[]): readonly number[] {
  const widths: number[] = [];
  for (const { text } of lines) {
    const spans = /^\/ColSpan (\d+)/.exec(text)?.[1];
    if (text === "TR") widths.push(0);
    else if (/^T[DH]\b/.test(text)) widths.push((widths.pop() ?? 0) + 1);
    else if (spans !== undefined) widths.push((widths.pop() ?? 0) + Number(spans) - 1);
  }
  return widths;
}

describe.skipIf(noQpdf)("the marks by which a drawing set is told (needs qpdf)", () => {
  const plain = () => run("qpdf", "--qdf", "--object-streams=disable", path, "-");

  it("say that the file is tagged, and in which language it is written", () => {
    expect(plain()).toMatch(/\/Lang \(en\)/);
    expect(plain()).toMatch(/\/Marked true/);
  });

  it("give every drawing words in its place", () => {
    const text = plain();
    const figures = text.match(/\/S \/Figure/g) ?? [];
    expect(figures.length).toBeGreaterThan(set.sheets.filter((one) => one.kind === "plan").length);
    expect(text.match(/\/Alt (\(.+|<[0-9a-f]+>)/g)).toHaveLength(figures.length);
    expect(text).toMatch(/\/Alt \(Plan of .*Poles: .*Terminals: T1/);
  });

  it("lead from a link to the sheet it names", () => {
    const text = plain();
    expect(text.match(/\/S \/Link/g)).toHaveLength(set.sheets.flatMap((one) => one.links).length);
    expect(text).toMatch(/\/Contents \(Sheet \d+\)/);
  });
});

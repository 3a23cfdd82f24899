import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { openPlant } from "../../../core/plant/plant.ts";
import { composeSet } from "../../../core/sheets/composeSet.ts";
import { layers } from "../../../core/sheets/paper/displayList.ts";
import { writePdf } from "../../../electron/host/writePdf.ts";
import { smallRoute } from "../../fixtures/route/buildRoute.ts";

const set = composeSet(openPlant(smallRoute()), []);
const pdf = await writePdf(set);
const folder = mkdtempSync(join(tmpdir(), "strandwright-pdf-"));
const path = join(folder, "set.pdf");
writeFileSync(path, pdf);
afterAll(() => rmSync(folder, { recursive: true }));

const lacks = (tool: string) => spawnSync(tool, ["--version"]).error !== undefined;
const noPoppler = lacks("pdfinfo");
const noQpdf = lacks("qpdf");

describe("a drawing set as PDF", () => {
  it("is the same bytes twice", async () => {
    expect(Buffer.from(await writePdf(set)).equals(Buffer.from(pdf))).toBe(true);
  });

  it("tells its progress sheet by sheet and stops when asked", async () => {
    const told: number[] = [];
    const stop = new AbortController();
    const work = writePdf(set, {
      signal: stop.signal,
      onSheet: (doneCount) => {
        told.push(doneCount);
        if (doneCount === 2) stop.abort(new Error("stopped"));
      },
    });
    await expect(work).rejects.toThrow("stopped");
    expect(told).toEqual([1, 2]);
  });

  it.skipIf(noPoppler)("has a page for each sheet, 17 by 11 in, and no date of today (needs poppler's pdfinfo)", () => {
    const facts = execFileSync("pdfinfo", [path], { encoding: "utf8" });
    expect(facts).toMatch(new RegExp(`Pages:\\s+${set.sheets.length}\\n`));
    expect(facts).toMatch(/Page size:\s+1224 x 792 pts/);
    expect(facts).toMatch(/CreationDate:.*2000/);
  });

  it.skipIf(noPoppler)("embeds every font, cut to what is used (needs poppler's pdffonts)", () => {
    const rows = execFileSync("pdffonts", [path], { encoding: "utf8" }).trim().split("\n").slice(2);
    expect(rows.length).toBeGreaterThanOrEqual(4);
    for (const row of rows) expect(row).toMatch(/yes yes yes/);
  });

  it.skipIf(noPoppler)("gives back its words as text (needs poppler's pdftotext)", () => {
    const text = execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" });
    for (const words of ["Terminal T1", "Open tube 1, blue BL", "2 Test Rd", "Bill of materials"])
      expect(text).toContain(words);
  });

  it.skipIf(noQpdf)("is sound, with layers, bookmarks and page labels (needs qpdf)", () => {
    execFileSync("qpdf", ["--check", path]);
    const facts = execFileSync("qpdf", ["--json", "--json-key=outlines", "--json-key=pagelabels", path], {
      encoding: "utf8",
    });
    const { outlines, pagelabels } = JSON.parse(facts);
    type Outline = { readonly title: string; readonly destpageposfrom1: number; readonly kids: readonly Outline[] };
    const all = (some: readonly Outline[]): readonly Outline[] => some.flatMap((one) => [one, ...all(one.kids)]);
    const closeout = set.sheets.filter((one) => one.kind === "closeout");
    const group = outlines.find((one: Outline) => one.title === "Closeout forms");
    expect(group.kids.map((one: Outline) => one.title)).toEqual(closeout.map((one) => `${one.number}  ${one.title}`));
    for (const sheet of set.sheets) {
      const led = all(outlines).find((one) => one.title === `${sheet.number}  ${sheet.title}`);
      expect(led?.destpageposfrom1).toBe(set.sheets.indexOf(sheet) + 1);
    }
    expect(pagelabels).toHaveLength(set.sheets.length);
    const plain = execFileSync("qpdf", ["--qdf", "--object-streams=disable", path, "-"], {
      encoding: "latin1",
      maxBuffer: 64e6,
    });
    expect(plain.match(/\/Type \/OCG/g)).toHaveLength(layers.length);
  });
});

import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { readXlsx } from "../../../electron/host/readTable/readXlsx.ts";
import { workbookExcess } from "../../../electron/host/readTable/workbookBounds.ts";
import { workbook } from "./workbook.ts";

describe("workbooks", () => {
  test("the first sheet with anything on it is read; numbers are those stored, rows those of the sheet", async () => {
    const bytes = workbook({
      Cover: [],
      Poles: [[null], ["Tag", "lon", "height ft"], ["P1", -71.1234567, 45], [null, null, null], ["P3", -71.1, null]],
    });
    expect(await readXlsx("poles.xlsx", bytes)).toMatchObject({
      ok: true,
      value: {
        lineWord: "row",
        headings: ["Tag", "lon", "height ft"],
        rows: [
          { line: 3, cells: ["P1", "-71.1234567", "45"] },
          { line: 5, cells: ["P3", "-71.1", ""] },
        ],
        notes: ['Sheet "Poles" is read, of 2 in the workbook.'],
      },
    });
  });

  test("a sheet can be named, and one that is not there is refused with those that are", async () => {
    const bytes = workbook({ A: [["x"], ["1"]], B: [["y"], ["2"]] });
    expect(await readXlsx("two.xlsx", bytes, "B")).toMatchObject({ ok: true, value: { headings: ["y"] } });
    expect(await readXlsx("two.xlsx", bytes, "C")).toMatchObject({
      ok: false,
      fault: { code: "no-sheet", mend: "Sheets: A, B." },
    });
  });

  test("text that looks like a formula stays text", async () => {
    expect(await readXlsx("f.xlsx", workbook({ A: [["note"], ["=1+1"]] }))).toMatchObject({
      ok: true,
      value: { rows: [{ cells: ["=1+1"] }] },
    });
  });

  test.each([
    ["a zip that is no workbook", Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0])],
    ["a workbook cut in half", workbook({ A: [["x"], ["1"]] }).slice(0, 700)],
  ])("%s is refused, never a crash", async (_, bytes) => {
    expect(await readXlsx("bad.xlsx", bytes)).toMatchObject({ ok: false, fault: { code: "not-xlsx" } });
  });

  test.each([
    ["one cell out at the far corner", '<row r="1048576"><c r="XFD1048576"><v>3</v></c></row></sheetData>'],
    ["a cell whose place is written in codes", '<row r="2"><c r="&#88;FD1"><v>3</v></c></row></sheetData>'],
    ["a row past the last a sheet has", '<row r="1048577"><c r="A1048577"><v>3</v></c></row></sheetData>'],
    ["a far last row", '<row r="9999999"><c r="C9999999"><v>3</v></c></row></sheetData>'],
  ])("a workbook with %s is refused before its empty cells fill the memory", async (_, rows) => {
    const files = unzipSync(workbook({ A: [["x"], ["1"]] }));
    const sheet = "xl/worksheets/sheet1.xml";
    files[sheet] = strToU8(strFromU8(files[sheet] ?? new Uint8Array()).replace("</sheetData>", rows));
    expect(await readXlsx("far.xlsx", zipSync(files))).toMatchObject({ ok: false, fault: { code: "too-large" } });
  });

  test("a workbook in which one figure was turned on its way is refused, not read with that figure", async () => {
    const parts = unzipSync(workbook({ A: [["height"], [40]] }));
    const bytes = zipSync(parts, { level: 0 });
    expect(await readXlsx("stored.xlsx", bytes)).toMatchObject({ ok: true, value: { rows: [{ cells: ["40"] }] } });
    const hurt = Uint8Array.from(bytes, (byte, at) =>
      strFromU8(bytes.subarray(at - 3, at + 1), true) === "<v>4" ? 0x38 : byte,
    );
    expect(hurt).not.toEqual(bytes);
    expect(await readXlsx("hurt.xlsx", hurt)).toMatchObject({ ok: false, fault: { code: "not-xlsx" } });
  });

  test("a small workbook whose parts, pictures too, unpack to more than the bound has too much", () => {
    const files = unzipSync(workbook({ A: [["x"], ["1"]] }));
    const bytes = zipSync({ ...files, "xl/media/image1.png": new Uint8Array(2_000_000) });
    expect(bytes.length).toBeLessThan(10_000);
    expect(workbookExcess(bytes, 1_000_000)).toBe("bytes");
    expect(workbookExcess(bytes, 3_000_000)).toBeNull();
  });

  test("a sheet of many rows and columns is read", async () => {
    const row = Array.from({ length: 20 }, (_, n) => n);
    const bytes = workbook({ A: [row, ...Array.from({ length: 1000 }, () => row)] });
    expect(await readXlsx("many.xlsx", bytes)).toMatchObject({ ok: true });
  });
});

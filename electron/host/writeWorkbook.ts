import writeExcelFile, { type CellObject } from "write-excel-file/node";
import type { Cell } from "../../core/sheets/paper/figure.ts";
import type { FlatSchedule } from "../../core/sheets/schedule/schedule.ts";
import { stillZip } from "./stillZip.ts";

/** What a workbook says of itself on its first sheet, line by line. */
export type About = readonly (readonly [what: string, words: string])[];

/**
 * Writes schedules as one workbook, a sheet for each behind one about the file: headings stay in view, numbers are numbers in the
 * format paper prints them in, and text stays text whatever it looks like. The same schedules give the same bytes.
 */
export async function writeWorkbook(schedules: readonly FlatSchedule[], about: About): Promise<Uint8Array> {
  const aboutSheet = {
    sheet: "About",
    columns: [{ width: 22 }, { width: 110 }],
    data: about.map(([what, words]) => [{ ...textCell(what), fontWeight: "bold" as const }, textCell(words)]),
  };
  const sheets = schedules.map(({ name, headings, widths, rows }) => ({
    sheet: name,
    columns: widths.map((width) => ({ width })),
    stickyRowsCount: 1,
    data: [
      headings.map((text) => ({
        ...textCell(text),
        fontWeight: "bold" as const,
        wrap: true,
        alignVertical: "top" as const,
      })),
      ...rows.map((row) => row.map(bookCell)),
    ],
  }));
  return stillZip(new Uint8Array(await writeExcelFile([aboutSheet, ...sheets]).toBuffer()));
}

function bookCell(cell: Cell): CellObject | null {
  if (typeof cell === "string") return cell === "" ? null : textCell(cell);
  return { value: cell.value, type: Number, format: formatOf(cell) };
}

function textCell(text: string): CellObject {
  return { value: text, type: String, format: "@" };
}

/** How a spreadsheet shows a number, with what paper prints before and after it. */
function formatOf({ decimalCount, before = "", after = "" }: Exclude<Cell, string>): string {
  const quoted = (words: string) => (words === "" ? "" : `"${words.replaceAll('"', "")}"`);
  const digits = decimalCount === 0 ? "#,##0" : `0.${"0".repeat(decimalCount)}`;
  return `${quoted(before)}${digits}${quoted(after)}`;
}

import readSheets, { type SheetData } from "read-excel-file/universal";
import { makeTable, type Table } from "../../../core/exchange/table.ts";
import { fail, type Result } from "../../../core/model/result.ts";
import { workbookExcess } from "./workbookBounds.ts";

/** Most that the parts of a workbook may unpack to, bytes. */
const largestUnpackedBytes = 128 * 1024 * 1024;

/**
 * Reads one sheet of an XLSX workbook: the first with anything on it, or the one named. The first row with anything in it is the
 * headings; row numbers are those of the sheet. Numbers come as the file stores them, dates as YYYY-MM-DD.
 *
 * @param name name of the file, for messages
 */
export async function readXlsx(name: string, bytes: Uint8Array, sheetName?: string): Promise<Result<Table>> {
  const excess = workbookExcess(bytes, largestUnpackedBytes);
  if (excess === "damage") return notXlsx(name);
  if (excess !== null)
    return fail(
      "too-large",
      excess === "bytes"
        ? "The workbook unpacks to more than can be read."
        : "The workbook's sheet reaches too far out.",
      name,
      "Copy the rows of this route into a workbook of their own, and try again.",
    );
  let sheets: Awaited<ReturnType<typeof readSheets>>;
  try {
    sheets = await readSheets(Uint8Array.from(bytes).buffer);
  } catch {
    return notXlsx(name);
  }
  const sheet =
    sheetName === undefined
      ? sheets.find(({ data }) => data.some(isFilled))
      : sheets.find((one) => one.sheet === sheetName);
  if (!sheet) {
    const what = sheetName === undefined ? "The workbook is empty." : `The workbook has no sheet "${sheetName}".`;
    return fail("no-sheet", what, name, `Sheets: ${sheets.map((one) => one.sheet).join(", ") || "none"}.`);
  }
  const records = sheet.data.map((cells, index) => ({ line: index + 1, cells })).filter(({ cells }) => isFilled(cells));
  const headings = withoutBlankEnd((records[0]?.cells ?? []).map(textOf));
  const rows = records.slice(1).map(({ line, cells }) => ({ line, cells: headings.map((_, at) => textOf(cells[at])) }));
  const others = sheets.length > 1 ? [`Sheet "${sheet.sheet}" is read, of ${sheets.length} in the workbook.`] : [];
  return makeTable({ name, lineWord: "row", headings, rows, bad: [], notes: others });
}

function notXlsx(name: string): Result<Table> {
  return fail(
    "not-xlsx",
    "The workbook cannot be read: it is damaged, locked by a password, or not XLSX.",
    name,
    "Save it again as XLSX, or as CSV.",
  );
}

type Cells = SheetData<unknown>[number];

function isFilled(cells: Cells): boolean {
  return cells.some((cell) => textOf(cell) !== "");
}

function withoutBlankEnd(headings: readonly string[]): string[] {
  return headings.slice(0, headings.findLastIndex((heading) => heading !== "") + 1);
}

function textOf(cell: unknown): string {
  if (cell === null || cell === undefined) return "";
  if (cell instanceof Date) return Number.isNaN(cell.getTime()) ? "" : cell.toISOString().slice(0, 10);
  return String(cell).trim();
}

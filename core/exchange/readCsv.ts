import Papa from "papaparse";
import { fail, type Result } from "../model/result.ts";
import { type BadRow, shownValue } from "./badRow.ts";
import { withoutGuard } from "./formulaGuard.ts";
import { makeTable, type Table, type TableRow, tableLimits } from "./table.ts";

/**
 * Reads delimited text: comma, semicolon, tab or bar, told from the text unless given; byte order mark, any line ends and line
 * breaks inside quotes are taken. Line numbers are those of the file. Blank lines are passed over.
 *
 * @param name name of the file, for messages
 * @param text the whole file
 * @param delimiter the mark between cells, where the person named it
 */
export function readCsv(name: string, text: string, delimiter = ""): Result<Table> {
  if (text.length > tableLimits.textLength) return tooLong(name);
  const plain = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
  const parsed = Papa.parse<string[]>(plain, { delimiter, newline: "\n", delimitersToGuess: [",", ";", "\t", "|"] });
  const records = numbered(parsed.data);
  const broken = new Map(
    parsed.errors.filter((error) => error.type === "Quotes").map((error) => [error.row ?? 0, error]),
  );
  for (const [index, error] of broken) {
    if (error.code === "MissingQuotes") return openQuote(name, records[index]?.line ?? 1);
  }
  const filled = records.filter((record) => record.cells.some((cell) => cell.trim() !== ""));
  const headings = filled[0]?.cells ?? [];
  const bad: BadRow[] = [];
  const rows: TableRow[] = [];
  for (const record of filled.slice(1)) {
    const what = broken.has(record.index) ? looseQuote : tooManyCells(record.cells, headings.length);
    if (what === null)
      rows.push({ line: record.line, cells: headings.map((_, at) => withoutGuard(record.cells[at] ?? "")) });
    else bad.push({ file: name, line: record.line, column: "", value: shownValue(record.cells.join(" | ")), ...what });
  }
  return makeTable({ name, lineWord: "line", headings, rows, bad, notes: [] });
}

type Numbered = { readonly index: number; readonly line: number; readonly cells: readonly string[] };

function numbered(records: readonly (readonly string[])[]): Numbered[] {
  let line = 1;
  return records.map((cells, index) => {
    const start = line;
    line += 1 + cells.reduce((count, cell) => count + cell.split("\n").length - 1, 0);
    return { index, line: start, cells };
  });
}

const looseQuote = {
  what: "A quote inside this row is not doubled, so where its cells end cannot be told.",
  accepted: 'quotes inside a quoted cell written twice: "45"" pole"',
};

function tooManyCells(cells: readonly string[], headingCount: number): Pick<BadRow, "what" | "accepted"> | null {
  if (cells.slice(headingCount).every((cell) => cell.trim() === "")) return null;
  return {
    what: `The row has ${cells.length} cells under ${headingCount} headings; a cell with the delimiter in it may want quotes.`,
    accepted: `${headingCount} cells, and quotes around a cell that holds the delimiter`,
  };
}

function openQuote(name: string, line: number): Result<Table> {
  return fail(
    "open-quote",
    "A quote is opened and never closed, so the rest of the file cannot be told apart.",
    `${name}, line ${line}`,
    "Close the quote, or double a quote that belongs to the text.",
  );
}

function tooLong(name: string): Result<Table> {
  return fail(
    "too-large",
    "The file is too large to read as text.",
    name,
    "Cut it to the area of this route and try again.",
  );
}

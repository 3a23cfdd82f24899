import { fail, ok, type Result } from "../model/result.ts";
import type { BadRow } from "./badRow.ts";

/** One row of a file; `line` is where a person finds it. */
export type TableRow = { readonly line: number; readonly cells: readonly string[] };

/** What the rows of a file are called, and counted as. */
export const lineWords = ["line", "row", "feature", "placemark", "waypoint"] as const;

/** What every kind of file becomes before its columns are matched: text under headings. */
export type Table = {
  /** Name of the file as a person knows it. */
  readonly name: string;
  /** What a row's `line` counts. */
  readonly lineWord: (typeof lineWords)[number];
  /** Never empty, never twice the same. */
  readonly headings: readonly string[];
  readonly rows: readonly TableRow[];
  /** Parts of the file that could not become rows. */
  readonly bad: readonly BadRow[];
  /** What was read another way than the file says. */
  readonly notes: readonly string[];
};

/** Largest table that is taken; a route of 10,000 poles needs a tenth of it. */
export const tableLimits = { rowCount: 100_000, columnCount: 400, textLength: 64 * 1024 * 1024 } as const;

/**
 * A table with clean headings and within its limits.
 *
 * Blank headings are named after their column, repeated ones numbered. Refuses with "empty-table", "too-many-rows" or
 * "too-many-columns".
 */
export function makeTable(raw: Table): Result<Table> {
  const { name, bad, headings, rows } = raw;
  if (headings.length > tableLimits.columnCount) {
    return fail(
      "too-many-columns",
      `The file has ${headings.length} columns; at most ${tableLimits.columnCount} can be read.`,
      name,
      "Keep the columns the import needs and try again.",
    );
  }
  if (rows.length > tableLimits.rowCount) return tooManyRows(name, rows.length);
  const first = bad[0];
  if (rows.length === 0 && first) {
    return fail(
      "no-good-row",
      `Nothing in the file can be read: ${first.what}`,
      `${name}, ${raw.lineWord} ${first.line}`,
      `Accepted here: ${first.accepted}.`,
    );
  }
  if (rows.length === 0 || headings.length === 0) {
    return fail(
      "empty-table",
      headings.length === 0 ? "The file is empty." : "The file has headings and no rows.",
      name,
      "Give a file with a row of headings and at least one row under it.",
    );
  }
  return ok({ ...raw, headings: distinctHeadings(headings) });
}

/** The fault of a file that has more rows than a table may. */
export function tooManyRows(name: string, count: number): Result<Table> {
  return fail(
    "too-many-rows",
    `The file has ${count} rows; at most ${tableLimits.rowCount} can be read at once.`,
    name,
    "Split the file, or cut it to the area of this route.",
  );
}

function distinctHeadings(headings: readonly string[]): string[] {
  const taken = new Set<string>();
  return headings.map((heading, index) => {
    const plain = heading.replace(/\s+/g, " ").trim() || `column ${index + 1}`;
    let distinct = plain;
    for (let n = 2; taken.has(distinct); n += 1) distinct = `${plain} (${n})`;
    taken.add(distinct);
    return distinct;
  });
}

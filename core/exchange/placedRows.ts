import type { LonLat } from "../geodesy/lonLat.ts";
import type { Result } from "../model/result.ts";
import { makeTable, type Table, tableLimits, tooManyRows } from "./table.ts";

/** One thing of a file of places: where it is, and what is told of it by name. */
export type PlacedRow = {
  readonly line: number;
  readonly point: LonLat | null;
  readonly values: ReadonlyMap<string, string>;
};

/**
 * A table of things that have a place: `lon` and `lat`, then a column for every name any of them has a value under. Refuses as
 * makeTable does; a value named `lon` or `lat` stands beside the place's own, which counts.
 *
 * @param count  how many the file has, those that are not read too
 */
export function placedTable(
  file: Omit<Table, "headings" | "rows">,
  read: readonly PlacedRow[],
  count: number,
): Result<Table> {
  if (count > tableLimits.rowCount) return tooManyRows(file.name, count);
  const keys = [...new Set(read.flatMap((row) => [...row.values.keys()]))];
  const headings = ["lon", "lat", ...keys];
  if (headings.length > tableLimits.columnCount) return makeTable({ ...file, headings, rows: [] });
  const rows = read.map(({ line, point, values }) => ({
    line,
    cells: [point ? String(point[0]) : "", point ? String(point[1]) : "", ...keys.map((key) => values.get(key) ?? "")],
  }));
  return makeTable({ ...file, headings, rows });
}

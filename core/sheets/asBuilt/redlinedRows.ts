import { cellText } from "../paper/figure.ts";
import type { TableRow } from "../paper/tableRow.ts";
import type { Schedule } from "../schedule/schedule.ts";

/**
 * A schedule as built, struck in it what was designed and prints otherwise; as it is where the route is not drawn as built.
 *
 * @param headings  of the columns where it is struck; all where not given
 */
export function redlinedSchedule(built: Schedule, designed: Schedule | null, headings?: readonly string[]): Schedule {
  if (!designed) return built;
  const isStruck = (column: number) => headings?.includes(built.columns[column]?.heading ?? "") ?? true;
  return { ...built, rows: redlinedRows(built.rows, designed.rows, isStruck) };
}

/**
 * The rows of a table as built, struck in them what was designed and prints otherwise. A row is held against the one under the same group
 * that begins with the same words, the second of them against the second.
 */
export function redlinedRows(
  built: readonly TableRow[],
  designed: readonly TableRow[],
  isStruck: (column: number) => boolean = () => true,
): readonly TableRow[] {
  const designedBy = new Map(keyed(designed));
  return keyed(built).map(([key, row]) => {
    const drawn = designedBy.get(key);
    return drawn && "cells" in row && "cells" in drawn ? struckRow(row, drawn, isStruck) : row;
  });
}

type FiguresRow = Extract<TableRow, { readonly cells: unknown }>;

function struckRow(built: FiguresRow, drawn: FiguresRow, isStruck: (column: number) => boolean): TableRow {
  const struck = built.cells.map((cell, column) => {
    const was = cellText(drawn.cells[column] ?? "");
    return was === "" || !isStruck(column) || was === cellText(cell) ? null : was;
  });
  return struck.every((one) => one === null) ? built : { ...built, struck };
}

function keyed(rows: readonly TableRow[]): readonly (readonly [string, TableRow])[] {
  const seen = new Map<string, number>();
  let group = "";
  return rows.map((row) => {
    if ("group" in row) group = row.of ?? row.group;
    const words = "cells" in row ? cellText(row.cells[0] ?? "") : "";
    const name = `${group}\n${"cells" in row}\n${words}`;
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return [`${name}\n${count}`, row];
  });
}

import type { Face } from "./displayList.ts";
import { type Cell, cellText } from "./figure.ts";
import { shortenText, wrapText } from "./fitText.ts";
import { bodyMm, smallMm } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import type { PaperBox } from "./paper.ts";
import type { Column, TableRow } from "./tableRow.ts";

export const lineMm = 3.85;
export const rowPadMm = 1.15;
export const groupMm = 7.4;
export const cellPadMm = 1.4;
export const chipMm = { width: 3.6, height: 2, gap: 1.2 } as const;
const headingMm = 6.1;
export const headingLineMm = 2.9;
/** Least height of a row with fields to write in by hand, gloves on, mm: common practice, no source. */
const formRowMm = 6.5;
const lineRowMm = lineMm + 2 * rowPadMm - (lineMm - bodyMm) / 2;

/** Left edges of a table's columns and the right edge of its last, mm. */
export function columnEdges(columns: readonly Column[], box: PaperBox): readonly number[] {
  return [...cellsOf(columns, box).map((one) => one.left), box.right];
}

/** Height of a table whose headings take two lines and its rows as many as told, mm. */
export function tableMm(rowCount: number, rowLines = 1): number {
  return headingMm + headingLineMm + rowCount * (lineRowMm + (rowLines - 1) * lineMm);
}

/** Height of a table, its headings included, mm. */
export function tableHeightMm(
  columns: readonly Column[],
  rows: readonly TableRow[],
  box: PaperBox,
  ruled = false,
): number {
  const cells = cellsOf(columns, box);
  return rows.reduce((sum, row) => sum + rowMm(cells, row, ruled), headingsMm(cells));
}

export type Place = Column & { readonly left: number; readonly width: number };

export function cellsOf(columns: readonly Column[], box: PaperBox): readonly Place[] {
  const shares = columns.reduce((sum, one) => sum + one.share, 0);
  const unitMm = (box.right - box.left) / shares;
  let left = box.left;
  return columns.map((column) => {
    const cell = { ...column, left, width: column.share * unitMm };
    left += cell.width;
    return cell;
  });
}

export function indentMm(place: Place): number {
  return place.chip ? chipMm.width + chipMm.gap : 0;
}

export function linesOf(cell: Place, filling: Cell): readonly string[] {
  const text = cellText(filling);
  const widthMm = cell.width - 2 * cellPadMm - indentMm(cell);
  return (cell.wraps ?? cell.align !== "right")
    ? wrapText(text, "plain", bodyMm, widthMm)
    : [shortenText(text, "plain", bodyMm, widthMm)];
}

type SpanningRow = Exclude<TableRow, { readonly cells: readonly Cell[] }>;

export function spanningFace(row: SpanningRow): Face {
  return "group" in row ? "plainBold" : "plain";
}

/** A text across all columns, broken into lines. */
export function spanningLines(row: SpanningRow, cells: readonly Place[]): readonly string[] {
  const sum = "group" in row && row.sum !== undefined ? textWidthMm(row.sum, "plainBold", bodyMm) + 4 * cellPadMm : 0;
  const width = cells.reduce((all, one) => all + one.width, 0) - 2 * cellPadMm - sum;
  return wrapText("group" in row ? row.group : row.note, spanningFace(row), bodyMm, width);
}

export function rowMm(cells: readonly Place[], row: TableRow, ruled: boolean): number {
  if (!("cells" in row)) {
    const more = (spanningLines(row, cells).length - 1) * lineMm;
    return more + ("group" in row ? groupMm : lineRowMm);
  }
  const counts = cells.map((cell, index) => linesOf(cell, row.cells[index] ?? "").length);
  const linesMm = (Math.max(1, ...counts) - 1) * lineMm + struckMm(row.struck) + lineRowMm;
  return Math.max(ruled ? formRowMm : 0, linesMm);
}

/** Height of the headings, mm: as many lines as the column that needs most. */
export function headingsMm(cells: readonly Place[]): number {
  const lines = Math.max(1, ...cells.map((one) => headingLines(one).length));
  return headingMm + (lines - 1) * headingLineMm;
}

/** A column's heading broken into lines, its unit last. */
export function headingLines(cell: Place) {
  const lines = wrapText(cell.heading, "plainBold", smallMm, cell.width - 2 * cellPadMm);
  return [...lines.map((text) => ({ text, face: "plainBold" as const })), ...unitLine(cell)];
}

function unitLine(cell: Place) {
  return cell.unit ? [{ text: cell.unit, face: "plain" as const }] : [];
}

/** Height that a row takes more where something in it is struck: one line over all its cells, so that they stay on one line, mm. */
export function struckMm(struck: readonly (string | null)[] = []): number {
  return struck.some((one) => one !== null) ? lineMm : 0;
}

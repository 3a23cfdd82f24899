import { struckWords } from "../asBuilt/struckWords.ts";
import { chipFill } from "./chipColours.ts";
import type { Face, Mark } from "./displayList.ts";
import { type Cell, cellText } from "./figure.ts";
import { shortenText, wrapText } from "./fitText.ts";
import { bodyMm, rectangle, smallMm, stroke, words } from "./marks.ts";
import { textWidthMm } from "./measureText.ts";
import type { PaperBox } from "./paper.ts";
import { type CellPart, cellPart, type ToldRow } from "./part.ts";

export type Column = {
  readonly heading: string;
  /** Unit of the figures below, printed under the heading; empty for words. */
  readonly unit?: string;
  /** Unit of figures that paper prints with theirs, such as 18 ft 6 in; a spreadsheet's heading names it. */
  readonly innerUnit?: string;
  /** What columns beside each other have in common, printed over them. */
  readonly over?: string;
  /** Share of the table's width. */
  readonly share: number;
  readonly align?: "left" | "right";
  /** Whether a long text is broken into lines or cut with an ellipsis; where not given, words at the left are broken, figures at the right cut. */
  readonly wraps?: boolean;
  /** True keeps room before the text of a row for a chip of a colour of the code. */
  readonly chip?: boolean;
};

/** Figures in columns, a heading over the rows that follow, or a sentence across all columns. */
export type TableRow =
  | {
      readonly cells: readonly Cell[];
      /** What was designed and built otherwise, column by column: printed struck over the cell; null and left out for what was not. */
      readonly struck?: readonly (string | null)[];
      /** Colours of the code, one for each column that has chips, left to right; null leaves one out. */
      readonly chips?: readonly (number | null)[];
    }
  /** `of` is the group's name by itself, where its heading says more; `sum` stands under the last column. */
  | { readonly group: string; readonly of?: string; readonly sum?: string }
  | { readonly note: string };

const lineMm = 3.85;
const rowPadMm = 1.15;
const groupMm = 7.4;
/** Groups up to this part of a page stay whole. */
const wholeFrac = 0.5;
const cellPadMm = 1.4;
const chipMm = { width: 3.6, height: 2, gap: 1.2 } as const;
const headingMm = 6.1;
const headingLineMm = 2.9;
/** Least height of a row with fields to write in by hand, gloves on, mm: common practice, no source. */
const formRowMm = 6.5;
/** A box to tick is larger than the words beside it. */
const tickMm = 3.2;
const [emptyBox, tickedBox] = ["□", "☑"] as const;
const lineRowMm = lineMm + 2 * rowPadMm - (lineMm - bodyMm) / 2;

/** A box to tick, ticked or empty. */
export function tickBox(isTicked: boolean): string {
  return isTicked ? tickedBox : emptyBox;
}

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

/**
 * Cuts rows into pages that each fit a box. A group of up to half a page is not torn; of a longer one, the heading is repeated where
 * it goes on.
 */
export function pageRows(
  columns: readonly Column[],
  rows: readonly TableRow[],
  box: PaperBox,
  ruled = false,
): readonly (readonly TableRow[])[] {
  const cells = cellsOf(columns, box);
  const pageMm = box.top - box.bottom - headingsMm(cells);
  const heights = new Map(rows.map((row) => [row, rowMm(cells, row, ruled)] as const));
  const heightOf = (row: TableRow) => heights.get(row) ?? rowMm(cells, row, ruled);
  const heightMm = (some: readonly TableRow[]) => some.reduce((sum, row) => sum + heightOf(row), 0);
  const pages: TableRow[][] = [];
  let page: TableRow[] = [];
  let leftMm = pageMm;
  const next = () => {
    if (page.length > 0) pages.push(page);
    [page, leftMm] = [[], pageMm];
  };
  const put = (row: TableRow) => {
    page.push(row);
    leftMm -= heightOf(row);
  };
  for (const block of blocksOf(rows)) {
    const blockMm = heightMm(block);
    const [head] = block;
    if (blockMm > leftMm && (blockMm <= pageMm * wholeFrac || heightMm(block.slice(0, 3)) > leftMm)) next();
    for (const row of block) {
      if (heightOf(row) > leftMm) {
        next();
        if (head && "group" in head) put({ group: `${head.group}, continued` });
      }
      put(row);
    }
  }
  next();
  return pages;
}

/** Rows with the group's heading they stand under. */
function blocksOf(rows: readonly TableRow[]): readonly (readonly TableRow[])[] {
  const blocks: TableRow[][] = [];
  for (const row of rows) {
    const last = blocks.at(-1);
    if (last && !("group" in row)) last.push(row);
    else blocks.push([row]);
  }
  return blocks;
}

/**
 * Draws a table from the top of a box down: headings, then the rows given, which the caller knows to fit.
 *
 * @param ruled  true makes a form of it: lines between the columns, so that every field has its edges, and rows high enough to write in
 */
export function drawTable(
  columns: readonly Column[],
  rows: readonly TableRow[],
  box: PaperBox,
  ruled = false,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const cells = cellsOf(columns, box);
  const table = { columnCount: cells.length };
  const marks: Mark[] = [...drawHeadings(cells, box, { table })];
  let top = box.top - headingsMm(cells);
  for (const row of rows) {
    const bottom = top - rowMm(cells, row, ruled);
    const spareMm = "cells" in row ? rowMm(cells, row, ruled) - rowMm(cells, row, false) : 0;
    marks.push(...drawRow(cells, row, box, top - spareMm / 2, { table }));
    if (ruled && "cells" in row) marks.push(...rowRules(columnEdges(columns, box), bottom, top));
    top = bottom;
    marks.push(
      stroke("tables", "fine", [
        [box.left, top],
        [box.right, top],
      ]),
    );
  }
  marks.push(
    stroke("tables", "bold", [
      [box.left, top],
      [box.right, top],
    ]),
  );
  return { marks, bottom: top };
}

function rowRules(edges: readonly number[], bottom: number, top: number): readonly Mark[] {
  return edges.map((x) =>
    stroke("tables", "fine", [
      [x, bottom],
      [x, top],
    ]),
  );
}

type Place = Column & { readonly left: number; readonly width: number };

function cellsOf(columns: readonly Column[], box: PaperBox): readonly Place[] {
  const shares = columns.reduce((sum, one) => sum + one.share, 0);
  const unitMm = (box.right - box.left) / shares;
  let left = box.left;
  return columns.map((column) => {
    const cell = { ...column, left, width: column.share * unitMm };
    left += cell.width;
    return cell;
  });
}

function indentMm(place: Place): number {
  return place.chip ? chipMm.width + chipMm.gap : 0;
}

function linesOf(cell: Place, filling: Cell): readonly string[] {
  const text = cellText(filling);
  const widthMm = cell.width - 2 * cellPadMm - indentMm(cell);
  return (cell.wraps ?? cell.align !== "right")
    ? wrapText(text, "plain", bodyMm, widthMm)
    : [shortenText(text, "plain", bodyMm, widthMm)];
}

type SpanningRow = Exclude<TableRow, { readonly cells: readonly Cell[] }>;

function spanningFace(row: SpanningRow): Face {
  return "group" in row ? "plainBold" : "plain";
}

/** A text across all columns, broken into lines. */
function spanningLines(row: SpanningRow, cells: readonly Place[]): readonly string[] {
  const sum = "group" in row && row.sum !== undefined ? textWidthMm(row.sum, "plainBold", bodyMm) + 4 * cellPadMm : 0;
  const width = cells.reduce((all, one) => all + one.width, 0) - 2 * cellPadMm - sum;
  return wrapText("group" in row ? row.group : row.note, spanningFace(row), bodyMm, width);
}

function rowMm(cells: readonly Place[], row: TableRow, ruled: boolean): number {
  if (!("cells" in row)) {
    const more = (spanningLines(row, cells).length - 1) * lineMm;
    return more + ("group" in row ? groupMm : lineRowMm);
  }
  const counts = cells.map((cell, index) => linesOf(cell, row.cells[index] ?? "").length);
  const linesMm = (Math.max(1, ...counts) - 1) * lineMm + struckMm(row.struck) + lineRowMm;
  return Math.max(ruled ? formRowMm : 0, linesMm);
}

function drawHeadings(cells: readonly Place[], box: PaperBox, row: ToldRow): readonly Mark[] {
  const bottom = box.top - headingsMm(cells);
  const marks: Mark[] = [
    stroke("tables", "bold", [
      [box.left, box.top],
      [box.right, box.top],
    ]),
  ];
  for (const [column, cell] of cells.entries()) {
    const x = cell.align === "right" ? cell.left + cell.width - cellPadMm : cell.left + cellPadMm;
    const part = cellPart(row, column, "column");
    const align = cell.align ?? "left";
    const all = headingLines(cell);
    all.forEach((line, index) => {
      const y = bottom + 1.9 + (all.length - 1 - index) * headingLineMm;
      marks.push(words(line.text, [x, y], { face: line.face, heightMm: smallMm, align, layer: "tables", part }));
    });
  }
  return [
    ...marks,
    stroke("tables", "medium", [
      [box.left, bottom],
      [box.right, bottom],
    ]),
  ];
}

/** Height of the headings, mm: as many lines as the column that needs most. */
function headingsMm(cells: readonly Place[]): number {
  const lines = Math.max(1, ...cells.map((one) => headingLines(one).length));
  return headingMm + (lines - 1) * headingLineMm;
}

/** A column's heading broken into lines, its unit last. */
function headingLines(cell: Place) {
  const lines = wrapText(cell.heading, "plainBold", smallMm, cell.width - 2 * cellPadMm);
  return [...lines.map((text) => ({ text, face: "plainBold" as const })), ...unitLine(cell)];
}

function unitLine(cell: Place) {
  return cell.unit ? [{ text: cell.unit, face: "plain" as const }] : [];
}

function drawRow(cells: readonly Place[], row: TableRow, box: PaperBox, top: number, told: ToldRow): readonly Mark[] {
  const first = top - rowPadMm - bodyMm - 0.2;
  if (!("cells" in row)) {
    const start = "group" in row ? top - groupMm + 1.9 : first;
    const names = "group" in row ? "row" : null;
    const part: CellPart = { as: "cell", row: told, column: 0, spans: cells.length, names };
    const style = { face: spanningFace(row), layer: "tables" } as const;
    const sum = "group" in row ? (row.sum ?? "") : "";
    return [
      ...spanningLines(row, cells).map((text, line) =>
        words(text, [box.left + cellPadMm, start - line * lineMm], { ...style, part }),
      ),
      ...(sum === "" ? [] : [words(sum, [box.right - cellPadMm, start], { ...style, align: "right", part })]),
    ];
  }
  const base = first - struckMm(row.struck);
  const chipped = cells.filter((one) => one.chip);
  const chips = (row.chips ?? []).flatMap((position, index) => {
    const cell = chipped[index];
    if (position === null || !cell) return [];
    const corner = [cell.left + cellPadMm, base + (bodyMm - chipMm.height) / 2] as const;
    return [rectangle("tables", "thin", corner, chipMm.width, chipMm.height, { fill: chipFill(position) })];
  });
  const texts = cells.flatMap((cell, index) => {
    const start = cell.left + cellPadMm + indentMm(cell);
    const x = cell.align === "right" ? cell.left + cell.width - cellPadMm : start;
    const part = cellPart(told, index);
    const align = cell.align ?? "left";
    const lines = linesOf(cell, row.cells[index] ?? "")
      .map((text, line) =>
        text === emptyBox || text === tickedBox
          ? words(text, [x, base - (tickMm - bodyMm) / 2], { heightMm: tickMm, align, layer: "tables", part })
          : words(text, [x, base - line * lineMm], { align, layer: "tables", part }),
      )
      .filter((mark) => mark.text !== "");
    const struck = row.struck?.[index] ?? null;
    if (struck === null) return lines;
    const was = shortenText(struck, "plain", bodyMm, cell.width - 2 * cellPadMm - indentMm(cell));
    return [...struckWords(was, [x, first], { align, layer: "tables", part }), ...lines];
  });
  return [...chips, ...texts];
}

/** Height that a row takes more where something in it is struck: one line over all its cells, so that they stay on one line, mm. */
function struckMm(struck: readonly (string | null)[] = []): number {
  return struck.some((one) => one !== null) ? lineMm : 0;
}

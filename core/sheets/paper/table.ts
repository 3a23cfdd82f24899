import { chipFill } from "./chipColours.ts";
import type { Mark } from "./displayList.ts";
import { shortenText } from "./fitText.ts";
import { bodyMm, rectangle, smallMm, stroke, words } from "./marks.ts";
import type { PaperBox } from "./paper.ts";
import { type CellPart, cellPart, type ToldRow } from "./part.ts";
import { struckWords } from "./struckWords.ts";
import {
  cellPadMm,
  cellsOf,
  chipMm,
  columnEdges,
  groupMm,
  headingLineMm,
  headingLines,
  headingsMm,
  indentMm,
  lineMm,
  linesOf,
  type Place,
  rowMm,
  rowPadMm,
  spanningFace,
  spanningLines,
  struckMm,
} from "./tableCells.ts";
import { type Column, isTickBox, type TableRow } from "./tableRow.ts";

/** A box to tick is larger than the words beside it. */
const tickMm = 3.2;

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
        isTickBox(text)
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

import type { PaperBox } from "./paper.ts";
import { cellsOf, headingsMm, rowMm } from "./tableCells.ts";
import type { Column, TableRow } from "./tableRow.ts";

/** Groups up to this part of a page stay whole. */
const wholeFrac = 0.5;

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

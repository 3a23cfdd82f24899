import type { Mark } from "./displayList.ts";
import { wrapText } from "./fitText.ts";
import { bodyMm, type Lettering, words } from "./marks.ts";
import type { PaperBox } from "./paper.ts";
import type { Part } from "./part.ts";
import { drawTable } from "./table.ts";
import { pageRows } from "./tablePages.ts";
import type { Column, TableRow } from "./tableRow.ts";

/** Something that stands in a column of text and is not torn over two pages. */
export type Block = {
  readonly heightMm: number;
  /** Draws it from the top of a box down. */
  readonly draw: (box: PaperBox) => readonly Mark[];
};

/** Blocks one under the other, on as many pages as they need. */
export function flow(blocks: readonly Block[], box: PaperBox): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [[]];
  let top = box.top;
  for (const block of blocks) {
    if (top - block.heightMm < box.bottom && top < box.top) {
      pages.push([]);
      top = box.top;
    }
    pages.at(-1)?.push(...block.draw({ ...box, top }));
    top -= block.heightMm;
  }
  return pages;
}

const leadingFrac = 1.75;

/** A paragraph broken into lines, with white under it. */
export function paragraph(text: string, box: PaperBox, lettering: Lettering = {}, afterMm = 2.2): Block {
  const { face = "plain", heightMm = bodyMm } = lettering;
  const lines = wrapText(text, face, heightMm, box.right - box.left);
  const leadMm = heightMm * leadingFrac;
  const part: Part = { as: "paragraph" };
  return {
    heightMm: lines.length * leadMm + afterMm,
    draw: ({ left, top }) =>
      lines.map((line, index) =>
        words(line, [left, top - heightMm - index * leadMm], { part, ...lettering, heightMm }),
      ),
  };
}

/** White between two blocks, mm. */
export function white(heightMm: number): Block {
  return { heightMm, draw: () => [] };
}

/** A table with its name over it; one longer than a page in pieces. */
export function tableBlocks(
  name: string,
  columns: readonly Column[],
  rows: readonly TableRow[],
  box: PaperBox,
): readonly Block[] {
  const nameMm = 5;
  const whole = { ...box, top: box.top - nameMm };
  return pageRows(columns, rows, whole).map((page) => ({
    heightMm: nameMm + whole.top - drawTable(columns, page, whole).bottom + 5,
    draw: (here) => [
      words(name, [here.left, here.top - bodyMm], { face: "plainBold" }),
      ...drawTable(columns, page, { ...here, top: here.top - nameMm }).marks,
    ],
  }));
}

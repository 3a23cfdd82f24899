/**
 * What marks are to somebody who hears a sheet instead of seeing it. Marks that share one part are told together. A text without a
 * part is told as a line by itself; lines and arcs without one, and what lies on the frame, are not told.
 */
export type Part =
  | { readonly as: "heading" }
  | { readonly as: "paragraph" }
  /** A drawing, told in the words given instead of mark by mark. */
  | { readonly as: "figure"; readonly words: string }
  | CellPart;

export type CellPart = {
  readonly as: "cell";
  readonly row: ToldRow;
  /** The first column it stands in, from 0, and how many it takes. */
  readonly column: number;
  readonly spans: number;
  /** What the cell names: the cells under it, or beside it; null where it is not a heading. */
  readonly names: "column" | "row" | null;
};

/** A cell of one column; the first of a row may name the row. */
export function cellPart(row: ToldRow, column: number, names: CellPart["names"] = null): CellPart {
  return { as: "cell", row, column, spans: 1, names };
}

/** Cells whose parts share one row stand beside each other, rows that share one table under each other. */
export type ToldRow = { readonly table: ToldTable };
export type ToldTable = { readonly columnCount: number };

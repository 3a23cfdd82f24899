/** A cell by its place in what is shown; row -1 is the headings. */
export type Spot = { readonly row: number; readonly col: number };

/** How much there is to move in. */
export type GridSize = { readonly rowCount: number; readonly colCount: number; readonly pageCount: number };

/** A block of cells, ends included; never the headings. */
export type Range = { readonly top: number; readonly bottom: number; readonly left: number; readonly right: number };

/** Where a key leads from a cell; null where the key leads nowhere. */
export function spotAfter(from: Spot, key: string, isFar: boolean, size: GridSize): Spot | null {
  const [lastRow, lastCol] = [size.rowCount - 1, size.colCount - 1];
  const at = (row: number, col: number): Spot => ({
    row: Math.max(-1, Math.min(lastRow, row)),
    col: Math.max(0, Math.min(lastCol, col)),
  });
  switch (key) {
    case "ArrowUp":
      return at(isFar ? 0 : from.row - 1, from.col);
    case "ArrowDown":
      return at(isFar ? lastRow : from.row + 1, from.col);
    case "ArrowLeft":
      return at(from.row, isFar ? 0 : from.col - 1);
    case "ArrowRight":
      return at(from.row, isFar ? lastCol : from.col + 1);
    case "Home":
      return at(isFar ? 0 : from.row, 0);
    case "End":
      return at(isFar ? lastRow : from.row, lastCol);
    case "PageUp":
      return at(Math.max(0, from.row - size.pageCount), from.col);
    case "PageDown":
      return at(from.row + size.pageCount, from.col);
    default:
      return null;
  }
}

/** The block between two cells. */
export function rangeBetween(a: Spot, b: Spot): Range {
  return {
    top: Math.max(0, Math.min(a.row, b.row)),
    bottom: Math.max(a.row, b.row),
    left: Math.min(a.col, b.col),
    right: Math.max(a.col, b.col),
  };
}

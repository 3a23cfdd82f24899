import type { Point } from "./geometry.ts";

/** Name under which the row index keeps the square a row lies in; not a column of any table. */
export const cellColumn = "cell";

/** Side of a square, m: near the reach of a drop, so that a question about one looks into nine squares. */
const sideM = 100;

/** The square of the plane a point lies in. */
export function cellOf({ eastM, northM }: Point): string {
  return cellName(Math.floor(eastM / sideM), Math.floor(northM / sideM));
}

/**
 * Every square that a circle may touch.
 *
 * @param radiusM  0 or more, finite
 * @throws RangeError when radiusM is neither
 */
export function cellsAround({ eastM, northM }: Point, radiusM: number): readonly string[] {
  if (!(radiusM >= 0 && radiusM < Number.POSITIVE_INFINITY))
    throw new RangeError(`radiusM must be 0 or more and finite, not ${radiusM}`);
  const cells: string[] = [];
  for (let column = Math.floor((eastM - radiusM) / sideM); column * sideM <= eastM + radiusM; column += 1) {
    for (let row = Math.floor((northM - radiusM) / sideM); row * sideM <= northM + radiusM; row += 1) {
      cells.push(cellName(column, row));
    }
  }
  return cells;
}

function cellName(column: number, row: number): string {
  return `${column} ${row}`;
}

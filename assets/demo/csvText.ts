/** A value of a table: text, or a number with the decimals it is written with, or nothing known. */
export type Cell = string | readonly [value: number, decimalCount: number] | null;

function cellText(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell !== "string") return cell[0].toFixed(cell[1]);
  return /[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** A table as comma-separated text with a heading line; lines end in a line feed. */
export function csvText(headings: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [headings, ...rows].map((row) => `${row.map(cellText).join(",")}\n`).join("");
}

/** A length in metres as a cell in feet. */
export function feetCell(lengthM: number, decimalCount: number): Cell {
  return [lengthM / 0.3048, decimalCount];
}

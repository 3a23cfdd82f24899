import Papa from "papaparse";
import { cellText } from "../sheets/paper/figure.ts";
import type { FlatSchedule } from "../sheets/schedule/schedule.ts";
import { guardedText } from "./formulaGuard.ts";

/**
 * Writes a schedule as CSV with its units in the headings. A number stands bare, but for one that paper marks, as over its limit or
 * unverified: that keeps its mark, and is text. Text that a spreadsheet would run as a formula gets an apostrophe.
 */
export function writeScheduleCsv({ headings, rows }: FlatSchedule): string {
  const data = rows.map((row) =>
    row.map((cell) => {
      if (typeof cell === "string") return cell;
      return cell.before || cell.after ? cellText(cell) : cell.value;
    }),
  );
  return `${Papa.unparse({ fields: [...headings], data }, { escapeFormulae: guardedText, newline: "\r\n" })}\r\n`;
}

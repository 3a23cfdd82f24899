import type { Cell } from "../paper/figure.ts";
import type { Column, TableRow } from "../paper/tableRow.ts";

/** A schedule as it is described once, for paper, CSV and workbook alike. */
export type Schedule = {
  /** What it is called in a workbook and as a file. */
  readonly name: string;
  /** What its groups are, such as Pole; a spreadsheet gives each row its group in a column of that heading. Null where it has none. */
  readonly grouped: string | null;
  readonly columns: readonly Column[];
  readonly rows: readonly TableRow[];
  /** What must be known to use it: at the foot of its sheets, and on the first sheet of a workbook. */
  readonly notes: readonly string[];
};

/** A schedule as a plain table: one line of headings with their units, and in every row its group. */
export type FlatSchedule = {
  readonly name: string;
  readonly headings: readonly string[];
  /** Wide as its column on paper, in characters. */
  readonly widths: readonly number[];
  readonly rows: readonly (readonly Cell[])[];
  readonly notes: readonly string[];
};

const charactersPerShare = 0.62;
const leastCharacters = 8;
const groupCharacters = 18;

/** Lays a schedule out flat. What paper prints across all columns stands in a column of remarks. */
export function flatSchedule({ name, grouped, columns, rows, notes }: Schedule): FlatSchedule {
  const hasNotes = rows.some((row) => "note" in row);
  const flat: (readonly Cell[])[] = [];
  let group = "";
  const inGroup = (text: string): readonly Cell[] => (grouped === null ? [] : [text]);
  for (const row of rows) {
    if ("group" in row) group = row.of ?? row.group;
    else if ("cells" in row)
      flat.push([...inGroup(group), ...columns.map((_, index) => row.cells[index] ?? ""), ...(hasNotes ? [""] : [])]);
    else flat.push([...inGroup(group), ...columns.map(() => ""), row.note]);
  }
  return {
    name,
    headings: [...(grouped === null ? [] : [grouped]), ...columns.map(headingOf), ...(hasNotes ? ["Remarks"] : [])],
    widths: [
      ...(grouped === null ? [] : [groupCharacters]),
      ...columns.map((one) => Math.max(leastCharacters, Math.round(one.share * charactersPerShare))),
      ...(hasNotes ? [60] : []),
    ],
    rows: flat,
    notes,
  };
}

function headingOf({ heading, over, unit = "", innerUnit = "" }: Column): string {
  const words = over === undefined ? heading : `${over}, ${heading}`;
  const named = unit || innerUnit;
  return named === "" ? words : `${words} (${named})`;
}

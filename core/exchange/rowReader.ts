import { type BadRow, shownValue } from "./badRow.ts";
import type { CellValue } from "./cellValue.ts";
import { readLengthM } from "./cellValue.ts";
import { bareHeading } from "./headingUnit.ts";
import { importFields } from "./importFields.ts";
import type { ImportKind, ImportOptions, LengthUnit } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import type { Table, TableRow } from "./table.ts";

/** Rows of one file read as rows of one kind, and what could not be read. */
export type ReadRows<T> = {
  readonly rows: readonly T[];
  readonly bad: readonly BadRow[];
  readonly notes: readonly string[];
};

/** Reads the fields of one row; what cannot be read is gathered in `bad`. */
export type RowReader = {
  readonly line: number;
  readonly has: (field: string) => boolean;
  /** The cell, trimmed; "" where the field has no column. */
  readonly text: (field: string) => string;
  /** The cell read by `read`; null where it is empty or could not be read. */
  readonly value: <T>(field: string, read: (text: string) => CellValue<T>) => T | null;
  readonly lengthM: (field: string) => number | null;
  readonly refuse: (field: string, what: string, accepted: string) => void;
  readonly bad: readonly BadRow[];
};

const longestText = 2000;

/**
 * Reads every row of a table with one function: a row with a bad cell is reported, the others are kept.
 *
 * @param readRow answers null for a row it has refused
 */
export function readRows<T>(
  source: {
    readonly table: Table;
    readonly kind: ImportKind;
    readonly map: ColumnMap;
    readonly options: ImportOptions;
  },
  readRow: (row: RowReader) => T | null,
): ReadRows<T> {
  const { table, kind, map, options } = source;
  const columns = new Map(Object.entries(map).map(([field, heading]) => [field, table.headings.indexOf(heading)]));
  const units = new Map(Object.entries(map).map(([field, heading]) => [field, bareHeading(heading).unit]));
  const fallback = options.lengthUnit ?? "ft";
  const bad: BadRow[] = [...table.bad];
  const rows: T[] = [];
  for (const row of table.rows) {
    const reader = openRow(table, map, columns, (field) => units.get(field) ?? fallback, row);
    const read = readRow(reader);
    if (reader.bad.length > 0) bad.push(...reader.bad);
    else if (read !== null) rows.push(read);
  }
  return { rows, bad, notes: [...table.notes, ...assumedUnits(kind, map, units, fallback)] };
}

function openRow(
  table: Table,
  map: ColumnMap,
  columns: ReadonlyMap<string, number>,
  unitOf: (field: string) => LengthUnit,
  row: TableRow,
): RowReader {
  const bad: BadRow[] = [];
  const text = (field: string): string => (row.cells[columns.get(field) ?? -1] ?? "").trim();
  const refuse = (field: string, what: string, accepted: string): void => {
    bad.push({
      file: table.name,
      line: row.line,
      column: map[field] ?? "",
      value: shownValue(text(field)),
      what,
      accepted,
    });
  };
  const value = <T>(field: string, read: (cell: string) => CellValue<T>): T | null => {
    const cell = text(field);
    if (cell === "") return null;
    const done = read(cell);
    if (done.ok) return done.value;
    refuse(field, done.what, done.accepted);
    return null;
  };
  for (const field of Object.keys(map)) {
    if (text(field).length > longestText) refuse(field, "The text is too long.", `at most ${longestText} characters`);
  }
  return {
    line: row.line,
    has: (field) => map[field] !== undefined,
    text,
    value,
    lengthM: (field) => value(field, (cell) => readLengthM(cell, unitOf(field))),
    refuse,
    bad,
  };
}

function assumedUnits(
  kind: ImportKind,
  map: ColumnMap,
  units: ReadonlyMap<string, LengthUnit | null>,
  fallback: LengthUnit,
): string[] {
  const unsaid = importFields[kind]
    .filter((field) => (field.kind === "length" || field.kind === "poleLength") && map[field.field] !== undefined)
    .filter((field) => units.get(field.field) === null)
    .map((field) => map[field.field]);
  const unit = { ft: "feet", m: "metres", usft: "US survey feet" }[fallback];
  return unsaid.length === 0 ? [] : [`Lengths without a unit in ${unsaid.join(", ")} are read as ${unit}.`];
}

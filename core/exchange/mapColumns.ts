import { fail, ok, type Result } from "../model/result.ts";
import { shownValue } from "./badRow.ts";
import { guessColumns } from "./guessColumns.ts";
import { importFields } from "./importFields.ts";
import type { ImportKind } from "./importOptions.ts";
import type { Table } from "./table.ts";

/** Field to heading. */
export type ColumnMap = Readonly<Record<string, string>>;

/**
 * The columns an import reads: what the person named, and the guess for every field they did not.
 *
 * @param explicit field to heading; "" leaves a field out. A heading named here is taken from whatever field was guessed for it.
 * @returns refuses with "unknown-field", "unknown-column" or "missing-column"
 */
export function mapColumns(table: Table, kind: ImportKind, explicit: ColumnMap = {}): Result<ColumnMap> {
  const fields = importFields[kind];
  for (const [field, heading] of Object.entries(explicit)) {
    if (!fields.some((one) => one.field === field)) {
      return fail(
        "unknown-field",
        `There is no field "${shownValue(field)}" in this import.`,
        table.name,
        `Fields: ${fields.map((one) => one.field).join(", ")}.`,
      );
    }
    if (heading !== "" && !table.headings.includes(heading)) {
      return fail(
        "unknown-column",
        `The file has no column "${shownValue(heading)}".`,
        `${table.name}, field ${field}`,
        columnsOf(table),
      );
    }
  }
  const named = new Set(Object.values(explicit));
  const guessed = Object.entries(guessColumns(table, kind)).filter(([, guess]) => !named.has(guess.heading));
  const all = { ...Object.fromEntries(guessed.map(([field, guess]) => [field, guess.heading])), ...explicit };
  const map = Object.fromEntries(Object.entries(all).filter(([, heading]) => heading !== ""));
  const missing = fields.filter((field) => field.required && map[field.field] === undefined);
  if (missing.length > 0) return noColumn(table, missing.map((field) => field.title).join(", "));
  if (kind === "pole" || kind === "livingUnit") {
    const hasPlace =
      (map.lon !== undefined && map.lat !== undefined) || (map.east !== undefined && map.north !== undefined);
    if (!hasPlace) return noColumn(table, "Longitude and Latitude, or East and North");
  }
  if (kind === "livingUnit" && !["address", "houseNumber", "houseName"].some((field) => map[field] !== undefined)) {
    return noColumn(table, "Address, or House number and Street");
  }
  return ok(map);
}

function noColumn(table: Table, titles: string): Result<ColumnMap> {
  return fail(
    "missing-column",
    `No column is matched to: ${titles}.`,
    table.name,
    `Name the column to use. ${columnsOf(table)}`,
  );
}

function columnsOf(table: Table): string {
  return [`The file has: ${table.headings.slice(0, 30).map(shownValue).join(", ")}.`, ...table.notes].join(" ");
}

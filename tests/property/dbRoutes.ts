import fc from "fast-check";
import { z } from "zod";
import { sameRow } from "../../core/edits/sameRow.ts";
import { references } from "../../core/model/references.ts";
import type { Route } from "../../core/model/route.ts";
import type { RowChange } from "../../core/model/rowChange.ts";
import { type TableName, tableNames, tables } from "../../core/model/tables.ts";

type Fields = Readonly<Record<string, string | number | boolean | null>>;

const mostRows = 3;

/** Routes with one to three rows in every table, any values their schemas take, every reference to a row that is there. */
export const anyRoute: fc.Arbitrary<Route> = fc
  .record(Object.fromEntries(tableNames.map((table) => [table, rowsOf(table)])))
  .map((drawn) => {
    const idOf = (table: TableName, number: number) => drawn[table]?.[number % drawn[table].length]?.id ?? `${table}-0`;
    const joined = tableNames.map((table) => {
      const rows = (drawn[table] ?? []).map((row) => {
        const named = Object.entries(references[table]).map(([key, parent]) => {
          const drawnNumber = row[key];
          return [key, typeof drawnNumber === "number" ? idOf(parent, drawnNumber) : null];
        });
        return tables[table].parse({ ...row, ...Object.fromEntries(named) });
      });
      return [table, new Map(rows.map((row) => [row.id, row]))];
    });
    return Object.fromEntries(joined) as Route; // every table is there, its rows just parsed
  });

/** The edit that turns one route into another. */
export function difference(from: Route, to: Route): RowChange[] {
  return tableNames.flatMap((table) => {
    const ids = new Set([...from[table].keys(), ...to[table].keys()]);
    return [...ids].flatMap((id) => {
      const before = from[table].get(id) ?? null;
      const after = to[table].get(id) ?? null;
      return sameRow(before, after) ? [] : [{ table, id, before, after } as RowChange]; // both sides come from one table
    });
  });
}

/** Rows whose references are still numbers, to be turned into ids that are there. */
function rowsOf(table: TableName): fc.Arbitrary<Fields[]> {
  const fields = Object.entries(tables[table].shape).map(([key, schema]) => {
    const nullable = schema instanceof z.ZodNullable;
    const inner = nullable ? schema.unwrap() : schema;
    const value: fc.Arbitrary<unknown> = key in references[table] ? fc.nat(mostRows) : valuesOf(inner);
    return [key, nullable ? fc.option(value) : value];
  });
  const row: fc.Arbitrary<Fields> = fc.record(Object.fromEntries(fields));
  const hasOneRow = tables[table].shape.id instanceof z.ZodLiteral;
  return fc
    .array(row, { minLength: 1, maxLength: hasOneRow ? 1 : mostRows })
    .map((rows) => rows.map((each, number) => (hasOneRow ? each : { ...each, id: `${table}-${number}` })));
}

function valuesOf(schema: z.ZodType): fc.Arbitrary<unknown> {
  if (schema instanceof z.ZodBoolean) return fc.boolean();
  if (schema instanceof z.ZodEnum) return fc.constantFrom(...schema.options);
  if (schema instanceof z.ZodLiteral) return fc.constantFrom(...schema.values);
  if (schema instanceof z.ZodNumber) {
    const { minValue, maxValue } = schema;
    // The file has one zero, so minus zero is drawn as zero.
    const numbers = schema.isInt
      ? fc.maxSafeInteger()
      : fc.double({
          min: minValue ?? -Number.MAX_VALUE,
          max: Math.min(maxValue ?? Infinity, Number.MAX_VALUE),
          noNaN: true,
        });
    return numbers
      .map((value) => (minValue === null || minValue < 0 ? value : Math.abs(value)) + 0)
      .filter(accepted(schema));
  }
  // NUL ends a text for SQLite's own functions: such a label is refused, as another test shows.
  return fc
    .string({ unit: "binary", maxLength: 12 })
    .map((text) => text.replaceAll("\0", ""))
    .filter(accepted(schema));
}

function accepted(schema: z.ZodType): (value: unknown) => boolean {
  return (value) => schema.safeParse(value).success;
}

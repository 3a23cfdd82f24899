import { z } from "zod";
import type { CatalogueName } from "../model/catalogueNames.ts";
import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import { type Row, tables } from "../model/tables.ts";
import { strayReference } from "./tableRow.ts";

/** Figures and words of a catalogue row by column, as they come from a form or a file. */
export const catalogueValues = z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.null()]));

/** A catalogue row that satisfies its schema and names only what is there, or what is wrong with it in plain words. */
export function catalogueRow(
  route: Route,
  table: CatalogueName,
  values: z.infer<typeof catalogueValues>,
): Result<Row<CatalogueName>> {
  const parsed = tables[table].safeParse(values);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return fail(
      "bad-row",
      `The catalogue cannot take this value: ${issue?.message ?? "unknown shape"}.`,
      [table, ...(issue?.path ?? [])].join(", "),
      "Correct that value.",
    );
  }
  const astray = strayReference(route, table, parsed.data);
  if (astray === null) return ok(parsed.data);
  return fail(
    "missing-row",
    `The row would name a ${astray.table} that is not there.`,
    astray.column,
    `Choose one of the catalogue: ${[...route[astray.table].keys()].join(", ")}.`,
  );
}

/** What a row of the catalogue is called: its name, or what a limit protects, or the load a factor is for. */
export function catalogueTag(row: Row<CatalogueName>): string {
  if ("surface" in row) return row.surface;
  if ("part" in row) return row.part;
  return "load" in row ? row.load : row.name;
}

import { z } from "zod";
import { catalogueNameSchema } from "../../model/catalogueNames.ts";
import { id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { catalogueRow, catalogueTag, catalogueValues } from "../catalogueRow.ts";
import type { Command } from "../command.ts";
import { sameRow } from "../sameRow.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({ table: catalogueNameSchema, id, values: catalogueValues });

/** Columns that only call or describe a row; all others are figures its basis vouches for. */
const wordColumns: ReadonlySet<string> = new Set(["name", "system", "note", "unit"]);
const changedHere = "changed by the company, no longer as published";

/**
 * Changes a row of the catalogue. A figure changed without saying where it was read is the company's own: the row's mark
 * becomes practice, and its clause says so.
 */
export const catalogueSet: Command<z.infer<typeof input>> = {
  id: "catalogue.set",
  input,
  label: ({ table, id: rowId }, route) => {
    const row = route[table].get(rowId);
    return `Change ${row ? catalogueTag(row) : rowId} in the catalogue`;
  },
  run(route, { table, id: rowId, values }) {
    const before = route[table].get(rowId);
    if (!before)
      return fail(
        "missing-row",
        "The catalogue has no such row.",
        rowId,
        "Look at the present catalogue and choose again.",
      );
    const columns = Object.keys(values).filter((column) => values[column] !== Reflect.get(before, column));
    const saysWhere = Object.keys(values).some((column) => column.startsWith("basis"));
    const isFigure = columns.some((column) => !wordColumns.has(column));
    const owned = isFigure && !saysWhere && before.basisMark !== "practice";
    const clause = [before.basisClause, changedHere].filter((words) => words !== "").join("; ");
    const basis = owned ? { basisMark: "practice", basisClause: clause } : {};
    const after = catalogueRow(route, table, { ...before, ...basis, ...values, id: rowId });
    if (!after.ok) return after;
    return ok(sameRow(before, after.value) ? [] : [rowEdit(table, before, after.value)]);
  },
};

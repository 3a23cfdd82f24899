import { z } from "zod";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import { tableNames } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { setRow } from "../setRow.ts";
import { rowTag } from "../tags.ts";

const input = z.strictObject({ table: z.enum(tableNames), id, values: z.record(z.string(), z.unknown()) });

/** Writes columns of one row that no other row leans on. */
export const rowSet: Command<z.infer<typeof input>> = {
  id: "row.set",
  input,
  label: ({ table, id: rowId }, route) => `Change ${rowTag(route, table, rowId)}`,
  run(route, given) {
    const row = setRow(route, given);
    return row.ok ? ok([row.value]) : row;
  },
};

import { z } from "zod";
import { id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import { tableNames } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { setRow } from "../setRow.ts";

const edit = z.strictObject({ table: z.enum(tableNames), id, values: z.record(z.string(), z.unknown()) });
const input = z.strictObject({ edits: z.array(edit).min(1) });

/** Writes columns of many rows at once: all of them, or none. A row may be named once. */
export const rowsSet: Command<z.infer<typeof input>> = {
  id: "rows.set",
  input,
  label: ({ edits }) => `Change ${edits.length === 1 ? "a row" : `${edits.length} rows`}`,
  run(route, { edits }) {
    const rows: RowChange[] = [];
    const named = new Set<string>();
    for (const one of edits) {
      const key = `${one.table} ${one.id}`;
      if (named.has(key)) return fail("named-twice", "The edit names a row twice.", one.id, "Put its values together.");
      named.add(key);
      const row = setRow(route, one);
      if (!row.ok) return row;
      rows.push(row.value);
    }
    return ok(rows);
  },
};

import { z } from "zod";
import { id } from "../../model/fields.ts";
import { tableNames } from "../../model/tables.ts";
import { openPlant } from "../../plant/plant.ts";
import { removalOf } from "../cascade.ts";
import type { Command } from "../command.ts";

const input = z.strictObject({ table: z.enum(tableNames), id });

/** Takes any row away with what hangs on it. */
export const rowRemove: Command<z.infer<typeof input>> = {
  id: "row.remove",
  input,
  label: ({ table, id: rowId }, route) => `Remove ${table} ${tagOf(route[table].get(rowId) ?? {}, rowId)}`,
  run: (route, doomed) => removalOf(openPlant(route), [doomed]),
};

/** The first of the columns people name rows by. */
function tagOf(row: object, rowId: string): string {
  for (const column of ["tag", "name", "address", "letter"]) {
    const value: unknown = Reflect.get(row, column);
    if (typeof value === "string" && value !== "") return value;
  }
  return rowId;
}

import { z } from "zod";
import { id } from "../../model/fields.ts";
import { tableNames } from "../../model/tables.ts";
import { openPlant } from "../../plant/plant.ts";
import { removalOf } from "../cascade.ts";
import type { Command } from "../command.ts";
import { rowTag } from "../tags.ts";

const input = z.strictObject({ table: z.enum(tableNames), id });

/** Takes any row away with what hangs on it. */
export const rowRemove: Command<z.infer<typeof input>> = {
  id: "row.remove",
  input,
  label: ({ table, id: rowId }, route) => `Remove ${rowTag(route, table, rowId)}`,
  run: (route, doomed) => removalOf(openPlant(route), [doomed]),
};

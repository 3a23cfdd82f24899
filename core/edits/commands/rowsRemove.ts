import { z } from "zod";
import { id } from "../../model/fields.ts";
import { tableNames } from "../../model/tables.ts";
import { openPlant } from "../../plant/plant.ts";
import { removalOf } from "../cascade.ts";
import type { Command } from "../command.ts";
import { countedKinds } from "../countedKinds.ts";

const input = z.strictObject({ rows: z.array(z.strictObject({ table: z.enum(tableNames), id })).min(1) });

/** Takes several rows away with what hangs on them, as one edit. */
export const rowsRemove: Command<z.infer<typeof input>> = {
  id: "rows.remove",
  input,
  label: ({ rows }) => `Remove ${countedKinds(rows)}`,
  run: (route, { rows }) => removalOf(openPlant(route), rows),
};

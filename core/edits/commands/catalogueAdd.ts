import { z } from "zod";
import { catalogueNameSchema } from "../../model/catalogueNames.ts";
import { catalogueRow, catalogueValues } from "../catalogueRow.ts";
import type { Command } from "../command.ts";
import { addRow } from "../tableRow.ts";

const input = z.strictObject({ table: catalogueNameSchema, row: catalogueValues });

/** Adds a row to the catalogue. */
export const catalogueAdd: Command<z.infer<typeof input>> = {
  id: "catalogue.add",
  input,
  label: ({ row }) => `Add ${String(row.name ?? row.surface ?? row.part ?? row.id)} to the catalogue`,
  run(route, { table, row }) {
    const made = catalogueRow(route, table, row);
    return made.ok ? addRow(route, table, made.value, "row of the catalogue") : made;
  },
};

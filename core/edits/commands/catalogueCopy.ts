import { z } from "zod";
import { type CatalogueName, catalogueNameSchema } from "../../model/catalogueNames.ts";
import { id, label } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { catalogueRow, catalogueTag } from "../catalogueRow.ts";
import type { Command } from "../command.ts";
import { copiedLimits } from "../setLimits.ts";
import { addRow } from "../tableRow.ts";

const input = z.strictObject({
  table: catalogueNameSchema.exclude(["clearanceLimit", "strengthLimit", "loadFactor"]),
  id,
  newId: id,
  name: label,
});

/** Copies a row of the catalogue under another name; a set brings its limits along. */
export const catalogueCopy: Command<z.infer<typeof input>> = {
  id: "catalogue.copy",
  input,
  label: ({ table, id: rowId }, route) => {
    const row = route[table].get(rowId);
    return `Copy ${row ? catalogueTag(row) : rowId} in the catalogue`;
  },
  run(route, { table, id: rowId, newId, name }) {
    const source = route[table].get(rowId);
    if (!source)
      return fail(
        "missing-row",
        "The catalogue has no such row.",
        rowId,
        "Look at the present catalogue and choose again.",
      );
    const copy = catalogueRow(route, table, { ...source, id: newId, name });
    if (!copy.ok) return copy;
    const added = addRow<CatalogueName>(route, table, copy.value, "row of the catalogue");
    if (!added.ok) return added;
    const limits = copiedLimits(route, table, rowId, newId);
    const taken = limits.find((limit) => limit.id.length > 80 || route[limit.table].has(limit.id));
    if (taken)
      return fail("taken-id", "A limit of the copy would have an id in use.", taken.id, "Give the copy another id.");
    return ok([...added.value, ...limits]);
  },
};

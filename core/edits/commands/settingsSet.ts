import { z } from "zod";
import { fail, ok } from "../../model/result.ts";
import { settingsOf } from "../../model/route.ts";
import { tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { strayReference } from "../tableRow.ts";

const input = z.strictObject({ values: tables.settings.omit({ id: true }).partial() });

export const settingsSet: Command<z.infer<typeof input>> = {
  id: "settings.set",
  input,
  label: ({ values }) => `Change ${Object.keys(values).length === 1 ? "a setting" : "settings"}`,
  run(route, { values }) {
    const before = settingsOf(route);
    const given = Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
    const after = { ...before, ...given };
    const astray = strayReference(route, "settings", after);
    if (astray)
      return fail(
        "missing-row",
        `The settings would name a ${astray.table} that is not there.`,
        astray.column,
        `Choose one of the catalogue: ${[...route[astray.table].keys()].join(", ")}.`,
      );
    return ok([{ table: "settings", id: before.id, before, after }]);
  },
};

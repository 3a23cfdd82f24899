import { z } from "zod";
import { mark, words } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { type Route, settingsOf } from "../../model/route.ts";
import type { RowChange } from "../../model/rowChange.ts";
import { type Settings, tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { sameRow } from "../sameRow.ts";
import { rowEdit, strayReference } from "../tableRow.ts";

const basis = z.strictObject({ document: words, clause: words, edition: words, mark });

const companysOwn = {
  document: "company setting",
  clause: "the company's own value",
  edition: "",
  mark: "practice",
} as const;

const input = z.strictObject({
  values: tables.settings.omit({ id: true }).partial(),
  /** Where the values were read; left out for the company's own. */
  basis: basis.optional(),
});

/**
 * Changes standards of the route. A value with a basis keeps where it was read; one changed without is the company's own,
 * and what was said of the value before no longer holds.
 */
export const settingsSet: Command<z.infer<typeof input>> = {
  id: "settings.set",
  input,
  label: ({ values }) => `Change ${Object.keys(values).length === 1 ? "a setting" : "settings"}`,
  run(route, { values, basis: read }) {
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
    return ok([
      rowEdit("settings", before, after),
      ...Object.keys(given).flatMap((column) => basisRows(route, column, { before, after }, read)),
    ]);
  },
};

function basisRows(
  route: Route,
  column: string,
  settings: { readonly before: Settings; readonly after: Settings },
  read: z.infer<typeof basis> | undefined,
): RowChange[] {
  const present = route.settingBasis.get(column) ?? null;
  const isSame = Reflect.get(settings.before, column) === Reflect.get(settings.after, column);
  // a switch of what is read on screen and paper is no figure of the company's: switched back, every row is as it was
  if (!read && (!present || isSame || column === "unitSystem")) return [];
  const { document, clause, edition, mark: readMark } = read ?? companysOwn;
  const row = {
    id: column,
    basisDocument: document,
    basisClause: clause,
    basisEdition: edition,
    basisMark: readMark,
  };
  return present && sameRow(present, row) ? [] : [rowEdit("settingBasis", present, row)];
}

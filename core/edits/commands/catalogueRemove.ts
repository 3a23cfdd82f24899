import { z } from "zod";
import { type CatalogueName, catalogueNameSchema } from "../../model/catalogueNames.ts";
import { id } from "../../model/fields.ts";
import { references } from "../../model/references.ts";
import { fail, ok } from "../../model/result.ts";
import type { Route } from "../../model/route.ts";
import { type TableName, tableNames } from "../../model/tables.ts";
import { catalogueTag } from "../catalogueRow.ts";
import type { Command } from "../command.ts";
import { limitTables, removedLimits } from "../setLimits.ts";
import { rowEdit } from "../tableRow.ts";
import { terminalTag, unitTag } from "../tags.ts";

const input = z.strictObject({ table: catalogueNameSchema, id });
const mostNamed = 5;

/** Takes a row out of the catalogue; refused while anything leans on it. A set takes its limits along. */
export const catalogueRemove: Command<z.infer<typeof input>> = {
  id: "catalogue.remove",
  input,
  label: ({ table, id: rowId }, route) => {
    const row = route[table].get(rowId);
    return `Remove ${row ? catalogueTag(row) : rowId} from the catalogue`;
  },
  run(route, { table, id: rowId }) {
    const row = route[table].get(rowId);
    if (!row)
      return fail(
        "missing-row",
        "The catalogue has no such row.",
        rowId,
        "Look at the present catalogue and choose again.",
      );
    const users = usersOf(route, table, rowId);
    if (users.length > 0)
      return fail(
        "in-use",
        `${catalogueTag(row)} is in use by ${users.join("; ")}.`,
        rowId,
        "Give those another row of the catalogue first.",
      );
    return ok([...removedLimits(route, table, rowId), rowEdit(table, row, null)]);
  },
};

/** What leans on a row, kind by kind: how many, and the first by name. */
function usersOf(route: Route, target: CatalogueName, targetId: string): string[] {
  return tableNames.flatMap((table) => {
    if (limitTables.some((one) => one === table)) return []; // limits belong to their set
    const columns = Object.entries<TableName>(references[table]).filter(([, to]) => to === target);
    const users = [...route[table].values()].filter((row) =>
      columns.some(([column]) => Reflect.get(row, column) === targetId),
    );
    if (users.length === 0) return [];
    if (table === "settings") return ["the company standards"];
    const names = users
      .slice(0, mostNamed)
      .map((row) => nameOf(route, row))
      .join(", ");
    const more = users.length > mostNamed ? ` and ${users.length - mostNamed} more` : "";
    return [`${tableWords(table)} ${names}${more}`];
  });
}

/** A row by its own name, else by the living unit or the terminal it belongs to. */
function nameOf(route: Route, row: object): string {
  const textOf = (column: string): string => {
    const value: unknown = Reflect.get(row, column);
    return typeof value === "string" ? value : "";
  };
  const own = ["tag", "name", "address"].map(textOf).find((text) => text !== "");
  if (own !== undefined) return own;
  if (textOf("livingUnitId") !== "") return unitTag(route, textOf("livingUnitId"));
  if (textOf("terminalId") !== "") return terminalTag(route, textOf("terminalId"));
  return "without a name";
}

function tableWords(table: TableName): string {
  return table.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

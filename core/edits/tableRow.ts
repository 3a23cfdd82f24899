import { references } from "../model/references.ts";
import { fail, ok, type Result } from "../model/result.ts";
import type { Route } from "../model/route.ts";
import type { RowChange } from "../model/rowChange.ts";
import type { Row, TableName } from "../model/tables.ts";
import type { Plant } from "../plant/plant.ts";

/** One row's edit where table and row are only known by type parameter. */
export function rowEdit<T extends TableName>(table: T, before: Row<T> | null, after: Row<T> | null): RowChange {
  const id = after?.id ?? before?.id ?? "";
  return { table, id, before, after } as RowChange; // table and rows share one type parameter
}

/**
 * The edit that adds a row whose id is free and whose references lead somewhere.
 *
 * @param thing  what it is called in the trade, for the faults
 */
export function addRow<T extends TableName>(route: Route, table: T, row: Row<T>, thing: string): Result<RowChange[]> {
  if (route[table].has(row.id))
    return fail("taken-id", `There is already a ${thing} with this id.`, row.id, "Give the new one another id.");
  const astray = strayReference(route, table, row);
  if (astray !== null)
    return fail(
      "missing-row",
      `The ${thing} names a ${astray.table} that is not there.`,
      `${row.id}, ${astray.column}`,
      "Choose one of the route.",
    );
  return ok([rowEdit(table, null, row)]);
}

/** The edits that forget the measured sags of others' wires in spans that are no longer what they were. */
export function forgottenSags(plant: Plant, spanIds: readonly string[]): RowChange[] {
  return spanIds
    .flatMap((spanId) => plant.where("wireSag", "spanId", spanId))
    .map((id) => rowEdit("wireSag", plant.rowOf("wireSag", id), null));
}

/** The first column of a row that names a row which is not there; null where all lead somewhere. */
export function strayReference(
  route: Route,
  table: TableName,
  row: object,
): { readonly column: string; readonly table: TableName } | null {
  for (const [column, target] of Object.entries<TableName>(references[table])) {
    const id: unknown = Reflect.get(row, column);
    if (typeof id === "string" && !route[target].has(id)) return { column, table: target };
  }
  return null;
}

import { fail, ok, type Result } from "../core/model/result.ts";
import { type Row, type TableName, tables } from "../core/model/tables.ts";

/**
 * The row, once its table's schema has accepted it; the very object given, as checking must not change what was written.
 *
 * The fault names table, id and field.
 */
export function checkRow<T extends TableName>(
  table: T,
  row: Readonly<Record<string, unknown>>,
  mend: string,
): Result<Row<T>> {
  const checked = tables[table].safeParse(row);
  if (checked.success) return ok(row as Row<T>); // the line above has just proved it
  const issue = checked.error.issues[0];
  const field = issue?.path.join(".") || "row";
  return fail(
    "bad-row",
    `The ${table} row does not fit its table: ${issue?.message ?? "unknown shape"}.`,
    `${table} ${String(row.id)}, ${field}`,
    mend,
  );
}

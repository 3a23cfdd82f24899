import type { RowChange } from "../model/rowChange.ts";
import type { BadRow } from "./badRow.ts";
import type { ImportChoices } from "./importOptions.ts";
import type { ColumnMap } from "./mapColumns.ts";
import type { NewSpan } from "./spanPole.ts";
import type { Table } from "./table.ts";

/** What is brought in, and how. */
export type ImportRequest = ImportChoices & { readonly table: Table };

/** A span a person should look at before trusting it. */
export type SpanForReview = Pick<NewSpan, "fromTag" | "toTag" | "lengthM" | "review"> & { readonly spanId: string };

/** What the rows of a file would do to a route. */
export type PlannedRows = {
  readonly rows: readonly RowChange[];
  readonly addedCount: number;
  readonly replacedCount: number;
  /** Rows that are already in the route and stay as they are there. */
  readonly skippedCount: number;
  readonly spanCount: number;
  readonly bad: readonly BadRow[];
  readonly notes: readonly string[];
  readonly spansForReview: readonly SpanForReview[];
};

/** An import worked out and not yet done: `rows` are one change, all or none. */
export type ImportPlan = PlannedRows & {
  /** Field to heading as the file was read. */
  readonly columns: ColumnMap;
  /** True where bad rows keep the whole file out: `rows` is then empty, and the counts say what the good rows would have done. */
  readonly refused: boolean;
};

/** How many planned rows add, replace and stay. */
export function countRows(
  rows: readonly RowChange[],
  tableName: RowChange["table"],
): Pick<PlannedRows, "addedCount" | "replacedCount"> {
  const own = rows.filter((row) => row.table === tableName);
  return {
    addedCount: own.filter((row) => row.before === null).length,
    replacedCount: own.filter((row) => row.before !== null).length,
  };
}

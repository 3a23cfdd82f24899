import type { Row, TableName } from "./tables.ts";

type RowChangeOf<T extends TableName> = {
  readonly table: T;
  readonly id: string;
  /** The row the edit was made on; null where it adds the row. */
  readonly before: Row<T> | null;
  /** The row after the edit; null where it takes the row away. */
  readonly after: Row<T> | null;
};

/** One row before and after an edit. */
export type RowChange = { [T in TableName]: RowChangeOf<T> }[TableName];

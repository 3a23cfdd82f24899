import type { TableName } from "../../model/tables.ts";
import type { Plant } from "../../plant/plant.ts";

/** One change as a person reads it, and the row it is about. */
export type ChangeLine = {
  readonly text: string;
  readonly table: TableName;
  readonly id: string;
  /** True where the row is no longer there: its place is that before the change. */
  readonly isGone: boolean;
};

/** The route before and after the changes told. */
export type Between = { readonly before: Plant; readonly after: Plant };

/** The line about a thing that is there now or, where it is gone, was. */
export function lineAbout(
  table: TableName,
  now: { readonly id: string } | null,
  then: { readonly id: string } | null,
  text: string,
): ChangeLine {
  return { text, table, id: now?.id ?? then?.id ?? "", isGone: now === null };
}

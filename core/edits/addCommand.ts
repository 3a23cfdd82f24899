import type { z } from "zod";
import type { Route } from "../model/route.ts";
import type { Row, TableName } from "../model/tables.ts";
import type { Command } from "./command.ts";
import { addRow } from "./tableRow.ts";

type Addition<Input, T extends TableName> = {
  readonly id: string;
  readonly table: T;
  readonly input: z.ZodType<Input>;
  /** What the row is called in the trade: "pole", "coil". */
  readonly thing: string;
  /** How people call this one. */
  readonly tag: (input: Input, route: Route) => string;
  readonly row: (input: Input) => Row<T>;
};

/** A command that adds one row; its input is the row with its id told by its full name. */
export function addCommand<Input, T extends TableName>(addition: Addition<Input, T>): Command<Input> {
  const { id, table, input, thing, tag, row } = addition;
  return {
    id,
    input,
    label: (given, route) => `Add ${thing} ${tag(given, route)}`,
    run: (route, given) => addRow(route, table, row(given), thing),
  };
}

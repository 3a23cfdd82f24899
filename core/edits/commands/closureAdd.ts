import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";

export const closureAdd = addCommand({
  id: "closure.add",
  table: "closure",
  input: tables.closure.omit({ id: true }).extend({ closureId: id }),
  thing: "closure",
  tag: (given) => given.name,
  row: ({ closureId, ...columns }) => ({ id: closureId, ...columns }),
});

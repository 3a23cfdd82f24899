import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";

export const poleAdd = addCommand({
  id: "pole.add",
  table: "pole",
  input: tables.pole.omit({ id: true }).extend({ poleId: id }),
  thing: "pole",
  tag: (given) => given.tag,
  row: ({ poleId, ...columns }) => ({ id: poleId, ...columns }),
});

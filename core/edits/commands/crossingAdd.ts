import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";

export const crossingAdd = addCommand({
  id: "crossing.add",
  table: "crossing",
  input: tables.crossing.omit({ id: true }).extend({ crossingId: id }),
  thing: "crossing",
  tag: (given) => given.name || given.surface,
  row: ({ crossingId, ...columns }) => ({ id: crossingId, ...columns }),
});

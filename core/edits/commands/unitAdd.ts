import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";

export const unitAdd = addCommand({
  id: "unit.add",
  table: "livingUnit",
  input: tables.livingUnit.omit({ id: true }).extend({ livingUnitId: id }),
  thing: "living unit",
  tag: (given) => given.address,
  row: ({ livingUnitId, ...columns }) => ({ id: livingUnitId, ...columns }),
});

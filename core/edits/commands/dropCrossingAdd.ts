import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";
import { unitTag } from "../tags.ts";

export const dropCrossingAdd = addCommand({
  id: "dropCrossing.add",
  table: "dropCrossing",
  input: tables.dropCrossing.omit({ id: true }).extend({ dropCrossingId: id }),
  thing: "drop crossing",
  tag: (given, route) => `${given.name || given.surface} before ${unitTag(route, given.livingUnitId)}`,
  row: ({ dropCrossingId, ...columns }) => ({ id: dropCrossingId, ...columns }),
});

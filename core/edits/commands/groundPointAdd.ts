import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";
import { spanTag } from "../tags.ts";

export const groundPointAdd = addCommand({
  id: "groundPoint.add",
  table: "groundPoint",
  input: tables.groundPoint.omit({ id: true }).extend({ groundPointId: id }),
  thing: "ground point",
  tag: (given, route) => `under span ${spanTag(route, given.spanId)}`,
  row: ({ groundPointId, ...columns }) => ({ id: groundPointId, ...columns }),
});

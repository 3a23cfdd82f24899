import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";
import { spanTag } from "../tags.ts";

export const structureAdd = addCommand({
  id: "structure.add",
  table: "structure",
  input: tables.structure.omit({ id: true }).extend({ structureId: id }),
  thing: "structure",
  tag: (given, route) => `${given.name || given.kind} beside span ${spanTag(route, given.spanId)}`,
  row: ({ structureId, ...columns }) => ({ id: structureId, ...columns }),
});

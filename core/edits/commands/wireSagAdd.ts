import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";
import { spanTag } from "../tags.ts";

export const wireSagAdd = addCommand({
  id: "wireSag.add",
  table: "wireSag",
  input: tables.wireSag.omit({ id: true }).extend({ wireSagId: id }),
  thing: "measured sag",
  tag: (given, route) => `of ${given.owner || "nobody"}'s wire in span ${spanTag(route, given.spanId)}`,
  row: ({ wireSagId, ...columns }) => ({ id: wireSagId, ...columns }),
});

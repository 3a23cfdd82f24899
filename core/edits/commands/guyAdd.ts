import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";
import { poleTag } from "../tags.ts";

export const guyAdd = addCommand({
  id: "guy.add",
  table: "guy",
  input: tables.guy.omit({ id: true }).extend({ guyId: id }),
  thing: "guy",
  tag: (given, route) => `at pole ${poleTag(route, given.poleId)}`,
  row: ({ guyId, ...columns }) => ({ id: guyId, ...columns }),
});

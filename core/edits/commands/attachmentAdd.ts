import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";
import { poleTag } from "../tags.ts";

export const attachmentAdd = addCommand({
  id: "attachment.add",
  table: "attachment",
  input: tables.attachment.omit({ id: true }).extend({ attachmentId: id }),
  thing: "attachment",
  tag: (given, route) => `of ${given.owner || "nobody"} on pole ${poleTag(route, given.poleId)}`,
  row: ({ attachmentId, ...columns }) => ({ id: attachmentId, ...columns }),
});

import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";

export const feedAdd = addCommand({
  id: "feed.add",
  table: "feed",
  input: tables.feed.omit({ id: true }).extend({ feedId: id }),
  thing: "hub output",
  tag: (given) => given.name,
  row: ({ feedId, ...columns }) => ({ id: feedId, ...columns }),
});

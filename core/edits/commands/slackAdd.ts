import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import { addCommand } from "../addCommand.ts";
import { spanTag } from "../tags.ts";

export const slackAdd = addCommand({
  id: "slack.add",
  table: "slack",
  input: tables.slack.omit({ id: true }).extend({ slackId: id }),
  thing: "coil",
  tag: (given, route) => `in span ${spanTag(route, given.spanId)}`,
  row: ({ slackId, ...columns }) => ({ id: slackId, ...columns }),
});

import type { z } from "zod";
import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { addRow } from "../tableRow.ts";

const input = tables.revision.omit({ id: true }).extend({ revisionId: id });

export const revisionIssue: Command<z.infer<typeof input>> = {
  id: "revision.issue",
  input,
  label: ({ letter }) => `Issue revision ${letter}`,
  run: (route, { revisionId, ...columns }) => addRow(route, "revision", { id: revisionId, ...columns }, "revision"),
};

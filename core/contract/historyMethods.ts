import { z } from "zod";
import { tableNames } from "../model/tables.ts";

const routeId = z.string().min(1);

/** One line of the history as a person reads it. */
const historyEntry = z.strictObject({
  seq: z.number(),
  label: z.string(),
  author: z.string(),
  atIso: z.string(),
  kind: z.enum(["edit", "undo", "redo"]),
});

/** What the host is asked about what has been done. */
export const historyMethods = {
  /** Edits that stand, newest first, and edits that were taken back, the next to make again first. */
  "history.list": {
    request: z.strictObject({ routeId, limit: z.number().int().positive().max(1000) }),
    reply: z.strictObject({ done: z.array(historyEntry).readonly(), undone: z.array(historyEntry).readonly() }),
  },
  /** Everything that touched one row, newest first. */
  "history.ofRow": {
    request: z.strictObject({
      routeId,
      table: z.enum(tableNames),
      id: z.string().min(1),
      limit: z.number().int().positive().max(1000),
    }),
    reply: z.strictObject({ entries: z.array(historyEntry).readonly() }),
  },
} as const;

export type HistoryEntry = z.infer<typeof historyEntry>;

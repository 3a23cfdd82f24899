import { z } from "zod";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({ readingId: z.string().min(1).max(300) });

/** Takes back what was read: the thing counts as not read. */
export const readingRemove: Command<z.infer<typeof input>> = {
  id: "reading.remove",
  input,
  label: ({ readingId }, route) => {
    const reading = route.reading.get(readingId);
    return reading ? `Remove the ${reading.what} read of ${subjectTag(route, reading)}` : "Remove a reading";
  },
  run(route, { readingId }) {
    const before = route.reading.get(readingId);
    return before ? ok([rowEdit("reading", before, null)]) : missing("reading", readingId);
  },
};

import { z } from "zod";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { agreeingWith } from "../packet/agreeing.ts";
import { subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({ readingId: z.string().min(1).max(300) });

/** Takes back what was read, by whichever crews: the thing counts as not read. */
export const readingRemove: Command<z.infer<typeof input>> = {
  id: "reading.remove",
  input,
  label: ({ readingId }, route) => {
    const reading = route.reading.get(readingId);
    return reading ? `Remove the ${reading.what} read of ${subjectTag(route, reading)}` : "Remove a reading";
  },
  run(route, { readingId }) {
    const before = route.reading.get(readingId);
    if (!before) return missing("reading", readingId);
    return ok([rowEdit("reading", before, null), ...agreeingWith(route, before)]);
  },
};

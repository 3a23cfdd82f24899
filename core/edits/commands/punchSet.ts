import { z } from "zod";
import { id, label, words } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { rowEdit } from "../tableRow.ts";
import { punchTag } from "../tags.ts";

const input = z.strictObject({ punchId: id, what: label, assignedTo: words, dueIso: words });

/** Says what is to be mended, by whom and until when. */
export const punchSet: Command<z.infer<typeof input>> = {
  id: "punch.set",
  input,
  label: ({ punchId }, route) => `Change ${punchTag(route, punchId)}`,
  run(route, { punchId, ...given }) {
    const before = route.punch.get(punchId);
    return before
      ? ok([rowEdit("punch", before, { ...before, ...given })])
      : missing("item of the punch list", punchId);
  },
};

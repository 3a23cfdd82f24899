import { z } from "zod";
import { id, label, words } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { rowEdit } from "../tableRow.ts";
import { punchTag } from "../tags.ts";

const input = z.strictObject({
  punchId: id,
  what: label.optional(),
  assignedTo: words.optional(),
  dueIso: words.optional(),
});

/** Says what is to be mended, by whom and until when; what is not said stays as it is. */
export const punchSet: Command<z.infer<typeof input>> = {
  id: "punch.set",
  input,
  label: ({ punchId }, route) => `Change ${punchTag(route, punchId)}`,
  run(route, { punchId, what, assignedTo, dueIso }) {
    const before = route.punch.get(punchId);
    if (!before) return missing("item of the punch list", punchId);
    const said = {
      what: what ?? before.what,
      assignedTo: assignedTo ?? before.assignedTo,
      dueIso: dueIso ?? before.dueIso,
    };
    return ok([rowEdit("punch", before, { ...before, ...said })]);
  },
};

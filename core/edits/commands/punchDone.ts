import { z } from "zod";
import { id, label, words } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { rowEdit } from "../tableRow.ts";
import { punchTag } from "../tags.ts";

const input = z.strictObject({ punchId: id, by: label, atIso: label, note: words });

/** Says that something of the punch list is mended. */
export const punchDone: Command<z.infer<typeof input>> = {
  id: "punch.done",
  input,
  label: ({ punchId, by }, route) => `Done by ${by}: ${punchTag(route, punchId)}`,
  run(route, { punchId, by, atIso, note }) {
    const before = route.punch.get(punchId);
    if (!before) return missing("item of the punch list", punchId);
    if (before.doneIso !== "")
      return fail(
        "punch-done",
        `Punch ${before.number} is done already, by ${before.doneBy}.`,
        punchId,
        "Open it again first.",
      );
    return ok([rowEdit("punch", before, { ...before, doneBy: by, doneIso: atIso, doneNote: note })]);
  },
};

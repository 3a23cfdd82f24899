import { z } from "zod";
import { id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { rowEdit } from "../tableRow.ts";
import { punchTag } from "../tags.ts";

const input = z.strictObject({ punchId: id });

/** Opens something of the punch list again: it was not mended after all. */
export const punchReopen: Command<z.infer<typeof input>> = {
  id: "punch.reopen",
  input,
  label: ({ punchId }, route) => `Open ${punchTag(route, punchId)} again`,
  run(route, { punchId }) {
    const before = route.punch.get(punchId);
    if (!before) return missing("item of the punch list", punchId);
    if (before.doneIso === "")
      return fail("punch-open", `Punch ${before.number} is open still.`, punchId, "Look at the present state.");
    return ok([rowEdit("punch", before, { ...before, doneBy: "", doneIso: "", doneNote: "" })]);
  },
};

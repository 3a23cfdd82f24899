import { z } from "zod";
import { id, label } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({ revisionId: id, by: label, dateIso: label });

/** Approves an issued revision: who and when. */
export const revisionApprove: Command<z.infer<typeof input>> = {
  id: "revision.approve",
  input,
  label: ({ revisionId, by }, route) => `Approve revision ${route.revision.get(revisionId)?.letter ?? ""}, by ${by}`,
  run(route, { revisionId, by, dateIso }) {
    const before = route.revision.get(revisionId);
    if (!before) return missing("revision", revisionId);
    if (before.voidedBy !== "")
      return fail(
        "void",
        `Revision ${before.letter} is void.`,
        `revision ${before.letter}`,
        "Issue the route under the next letter.",
      );
    if (before.approvedBy !== "")
      return fail(
        "approved",
        `Revision ${before.letter} was approved by ${before.approvedBy} on ${before.approvedIso}.`,
        `revision ${before.letter}`,
        "Undo that first to approve it otherwise.",
      );
    return ok([rowEdit("revision", before, { ...before, approvedBy: by, approvedIso: dateIso })]);
  },
};

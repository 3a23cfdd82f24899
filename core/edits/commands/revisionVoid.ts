import { z } from "zod";
import { id, label } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({ revisionId: id, by: label, dateIso: label, reason: label });

/** Takes an issued revision out of use: who, when and why. It stays on record under its letter. */
export const revisionVoid: Command<z.infer<typeof input>> = {
  id: "revision.void",
  input,
  label: ({ revisionId }, route) => `Void revision ${route.revision.get(revisionId)?.letter ?? ""}`,
  run(route, { revisionId, by, dateIso, reason }) {
    const before = route.revision.get(revisionId);
    if (!before) return missing("revision", revisionId);
    if (before.voidedBy !== "")
      return fail(
        "void",
        `Revision ${before.letter} was made void by ${before.voidedBy} on ${before.voidedIso}.`,
        `revision ${before.letter}`,
        "Look at its reason in the list of revisions.",
      );
    return ok([rowEdit("revision", before, { ...before, voidedBy: by, voidedIso: dateIso, voidReason: reason })]);
  },
};

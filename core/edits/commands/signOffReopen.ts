import { z } from "zod";
import { signaturesOf, stands } from "../../closeout/signatures.ts";
import { id, label } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { rowEdit } from "../tableRow.ts";
import { revisionIssue } from "./revisionIssue.ts";

const input = z.strictObject({ revisionId: id, letter: label, by: label, reason: label, atIso: label });

/** Opens a signed route again: its signatures stand no longer, and what was signed for is issued, so that what changes from here on is told. */
export const signOffReopen: Command<z.infer<typeof input>> = {
  id: "signOff.reopen",
  input,
  label: ({ by, letter }) => `Open the signed route again as revision ${letter}, by ${by}`,
  run(route, { revisionId, letter, by, reason, atIso }) {
    const standing = signaturesOf(route).filter(stands);
    if (standing.length === 0)
      return fail("not-signed", "No signature stands on this route.", "sign-off", "Edit it as it is.");
    const dateIso = atIso.slice(0, 10);
    const issued = revisionIssue.run(route, { revisionId, letter, dateIso, by, checkedBy: "", reason });
    if (!issued.ok) return issued;
    const reopened = { reopenedBy: by, reopenedIso: atIso, reopenReason: reason };
    return ok([...issued.value, ...standing.map((one) => rowEdit("signOff", one, { ...one, ...reopened }))]);
  },
};

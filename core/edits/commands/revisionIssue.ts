import { z } from "zod";
import { id, label, words } from "../../model/fields.ts";
import { fail } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { addRow } from "../tableRow.ts";

const input = z.strictObject({
  revisionId: id,
  letter: label,
  dateIso: label,
  by: words,
  checkedBy: words,
  reason: words,
});

/** Issues the route as it stands under a letter of its own. */
export const revisionIssue: Command<z.infer<typeof input>> = {
  id: "revision.issue",
  input,
  label: ({ letter }) => `Issue revision ${letter}`,
  run(route, { revisionId, ...columns }) {
    const issued = [...route.revision.values()];
    const same = issued.find((one) => one.letter.toLowerCase() === columns.letter.toLowerCase());
    if (same)
      return fail(
        "taken-letter",
        `Revision ${same.letter} was issued on ${same.dateIso}.`,
        `revision ${same.letter}`,
        "Give this one the next letter.",
      );
    const last = issued.reduce((most, one) => Math.max(most, one.number), 0);
    const standing = { approvedBy: "", approvedIso: "", voidedBy: "", voidedIso: "", voidReason: "" };
    return addRow(route, "revision", { id: revisionId, ...columns, number: last + 1, ...standing }, "revision");
  },
};

import { z } from "zod";
import { subjectFields } from "../../model/closeoutRows.ts";
import { id, label, words } from "../../model/fields.ts";
import type { Command } from "../command.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { addRow } from "../tableRow.ts";

const input = z.strictObject({
  punchId: id,
  ...subjectFields,
  what: label,
  /** The finding it comes from; empty where a person writes it. */
  ruleId: z.string().max(200),
  subjects: z.string().max(2000),
  assignedTo: words,
  dueIso: words,
  by: label,
  atIso: label,
});

/** Puts something to be mended on the punch list, under the next number. */
export const punchAdd: Command<z.infer<typeof input>> = {
  id: "punch.add",
  input,
  label: (given, route) => `Put ${subjectTag(route, given)} on the punch list`,
  run(route, { punchId, ...given }) {
    const astray = subjectAstray(route, given);
    if (astray) return astray;
    const number = Math.max(0, ...[...route.punch.values()].map((one) => one.number)) + 1;
    const open = { doneBy: "", doneIso: "", doneNote: "" };
    return addRow(route, "punch", { id: punchId, number, ...given, ...open }, "item of the punch list");
  },
};

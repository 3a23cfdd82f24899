import type { z } from "zod";
import { id } from "../../model/fields.ts";
import { tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { addRow } from "../tableRow.ts";

/** Its number follows, and it is open. */
const input = tables.punch
  .omit({ id: true, number: true, doneBy: true, doneIso: true, doneNote: true })
  .extend({ punchId: id });

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

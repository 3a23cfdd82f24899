import { z } from "zod";
import { milestoneId, subjectKey } from "../../closeout/subject.ts";
import { builtStates, subjectFields } from "../../model/closeoutRows.ts";
import { label } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Command } from "../command.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({
  subjects: z.array(z.strictObject(subjectFields)).min(1).max(20_000).readonly(),
  /** designed takes back every state. */
  state: z.enum(["designed", ...builtStates]),
  by: label,
  atIso: label,
});

/** Says that things have come to a state and to those before it; states beyond it are taken back. */
export const milestoneReach: Command<z.infer<typeof input>> = {
  id: "milestone.reach",
  input,
  label: ({ subjects, state }, route) => {
    const [first] = subjects;
    return subjects.length === 1 && first
      ? `Mark ${subjectTag(route, first)} as ${state}`
      : `Mark ${subjects.length} things as ${state}`;
  },
  run(route, { subjects, state, by, atIso }) {
    const reached = state === "designed" ? [] : builtStates.slice(0, builtStates.indexOf(state) + 1);
    const rows: RowChange[] = [];
    for (const subject of new Map(subjects.map((one) => [subjectKey(one), one])).values()) {
      const astray = subjectAstray(route, subject);
      if (astray) return astray;
      for (const one of builtStates) {
        const id = milestoneId(subject, one);
        const before = route.milestone.get(id) ?? null;
        if (reached.includes(one) && !before)
          rows.push(rowEdit("milestone", null, { id, ...subject, state: one, by, atIso }));
        if (!reached.includes(one) && before) rows.push(rowEdit("milestone", before, null));
      }
    }
    return ok(rows);
  },
};

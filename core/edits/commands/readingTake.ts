import type { z } from "zod";
import { readingId, subjectOf } from "../../closeout/subject.ts";
import { ok } from "../../model/result.ts";
import { tables } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = tables.reading.omit({ id: true });

/** Takes down what was read of a thing; a reading of the same before gives way to it, and so does what was accepted of that. */
export const readingTake: Command<z.infer<typeof input>> = {
  id: "reading.take",
  input,
  label: (given, route) => `Take down ${given.what} of ${subjectTag(route, given)}`,
  run(route, given) {
    const { kind, subjectId, port, alongId, what, wavelengthNm } = given;
    const astray = subjectAstray(route, given);
    if (astray) return astray;
    const id = readingId(subjectOf(kind, subjectId, port, alongId), what, wavelengthNm);
    const before = route.reading.get(id) ?? null;
    const isSame = before === null || (before.value === given.value && before.text === given.text);
    const accepted = isSame ? [] : [...route.waiver.values()].filter((one) => ` ${one.subjects} `.includes(` ${id} `));
    return ok([rowEdit("reading", before, { id, ...given }), ...accepted.map((one) => rowEdit("waiver", one, null))]);
  },
};

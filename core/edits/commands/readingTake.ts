import { z } from "zod";
import { readingId, subjectOf } from "../../closeout/subject.ts";
import { readingKinds, subjectFields } from "../../model/closeoutRows.ts";
import { count, figure, label, words } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({
  ...subjectFields,
  what: z.enum(readingKinds),
  wavelengthNm: count,
  value: figure.nullable(),
  text: words,
  by: label,
  atIso: label,
});

/** Takes down what was read of a thing; a reading of the same before gives way to it. */
export const readingTake: Command<z.infer<typeof input>> = {
  id: "reading.take",
  input,
  label: (given, route) => `Take down ${given.what} of ${subjectTag(route, given)}`,
  run(route, given) {
    const { kind, subjectId, port, alongId, what, wavelengthNm } = given;
    const astray = subjectAstray(route, given);
    if (astray) return astray;
    const id = readingId(subjectOf(kind, subjectId, port, alongId), what, wavelengthNm);
    return ok([rowEdit("reading", route.reading.get(id) ?? null, { id, ...given })]);
  },
};

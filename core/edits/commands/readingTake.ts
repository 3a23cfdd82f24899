import type { z } from "zod";
import { saysSame } from "../../closeout/packet/readingText.ts";
import { readingId, subjectOf } from "../../closeout/subject.ts";
import { ok } from "../../model/result.ts";
import { tables } from "../../model/tables.ts";
import { acceptedOf } from "../acceptedOf.ts";
import type { Command } from "../command.ts";
import { agreeingWith } from "../packet/agreeing.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = tables.reading.omit({ id: true, packetId: true, madeOn: true });

/**
 * Takes down what was read of a thing; a reading of the same before gives way to it, and so do what was accepted of that and crews' readings
 * that say the same as it.
 */
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
    const taken = rowEdit("reading", before, { id, ...given, packetId: null, madeOn: "" });
    const isSame = before === null || saysSame(before, given);
    return ok(isSame ? [taken] : [taken, ...acceptedOf(route, id), ...agreeingWith(route, before)]);
  },
};

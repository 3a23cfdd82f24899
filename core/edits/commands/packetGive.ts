import { z } from "zod";
import { milestoneId, subjectOf } from "../../closeout/subject.ts";
import { id, label, reference } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import type { Command } from "../command.ts";
import { subjectAstray } from "../subjects.ts";
import { addRow, rowEdit } from "../tableRow.ts";

/** As many as one page can carry and a phone can open; common practice, no source. */
const mostTerminals = 200;

const input = z.strictObject({
  packetId: id,
  crew: label,
  terminalIds: z.array(reference).min(1).max(mostTerminals).readonly(),
  /** Light is asked for at these beside that of the route's class, nm. */
  wavelengthsNm: z.array(z.number().int().min(600).max(1700)).max(6).readonly(),
  by: label,
  atIso: label,
});

/** Gives a crew a packet of terminals; those that were only designed are issued by it. */
export const packetGive: Command<z.infer<typeof input>> = {
  id: "packet.give",
  input,
  label: ({ crew, terminalIds }) =>
    `Give ${crew} a packet of ${terminalIds.length} ${terminalIds.length === 1 ? "terminal" : "terminals"}`,
  run(route, { packetId, crew, terminalIds, wavelengthsNm, by, atIso }) {
    const wanted = [...new Set(terminalIds)];
    const spaced = wanted.find((one) => one.includes(" "));
    if (spaced !== undefined)
      return fail("bad-input", "A terminal's id has a space in it.", spaced, "Choose other terminals.");
    const number = Math.max(0, ...[...route.packet.values()].map((one) => one.number)) + 1;
    const asked = { terminalIds: wanted.join(" "), wavelengthsNm: wavelengthsNm.join(" ") };
    const given = addRow(route, "packet", { id: packetId, number, crew, ...asked, by, atIso }, "packet");
    if (!given.ok) return given;
    const issued: RowChange[] = [];
    for (const terminalId of wanted) {
      const subject = subjectOf("terminal", terminalId);
      const astray = subjectAstray(route, subject);
      if (astray) return astray;
      const id = milestoneId(subject, "issued");
      if (!route.milestone.has(id))
        issued.push(rowEdit("milestone", null, { id, ...subject, state: "issued", by, atIso }));
    }
    return ok([...given.value, ...issued]);
  },
};

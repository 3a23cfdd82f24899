import { z } from "zod";
import { saysSame } from "../../closeout/packet/readingText.ts";
import { fail, ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({
  rivalId: z.string().min(1).max(300),
  /** Which of the two stands from now on. */
  stands: z.enum(["present", "brought"]),
});

/** Decides between what stands as read and what a crew brought; others that say what was chosen are settled with it. */
export const rivalDecide: Command<z.infer<typeof input>> = {
  id: "rival.decide",
  input,
  label({ rivalId, stands }, route) {
    const rival = route.rivalReading.get(rivalId);
    const thing = rival ? `${rival.what} of ${subjectTag(route, rival)}` : rivalId;
    return stands === "brought" ? `Take the reading brought, ${thing}` : `Keep the reading that stands, ${thing}`;
  },
  run(route, { rivalId, stands }) {
    const rival = route.rivalReading.get(rivalId);
    if (!rival)
      return fail("missing-row", "That reading waits no longer.", rivalId, "Look at the readings that still wait.");
    if (stands === "present") return ok([rowEdit("rivalReading", rival, null)]);
    const astray = subjectAstray(route, rival);
    if (astray) return astray;
    const { id: _, readingId, packetId: __, ...read } = rival;
    const settled = [...route.rivalReading.values()].filter(
      (one) => one.id === rivalId || (one.readingId === readingId && saysSame(one, rival)),
    );
    return ok([
      rowEdit("reading", route.reading.get(readingId) ?? null, { id: readingId, ...read }),
      ...settled.map((one) => rowEdit("rivalReading", one, null)),
    ]);
  },
};

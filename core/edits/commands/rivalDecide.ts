import { z } from "zod";
import { saysSame } from "../../closeout/packet/readingText.ts";
import { fail, ok } from "../../model/result.ts";
import { acceptedOf } from "../acceptedOf.ts";
import type { Command } from "../command.ts";
import { subjectAstray, subjectTag } from "../subjects.ts";
import { rowEdit } from "../tableRow.ts";

const input = z.strictObject({
  rivalId: z.string().min(1).max(300),
  /** Whether what stands keeps standing, or this takes its place. */
  stands: z.enum(["present", "brought"]),
});

/** Decides between what crews brought and what stands: what is chosen stands, the others wait no longer. */
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
    const standing = rival && (route.reading.get(rival.readingId) ?? null);
    if (!rival || (!standing && stands === "present"))
      return fail("missing-row", "That reading waits no longer.", rivalId, "Look at the readings that still wait.");
    const astray = subjectAstray(route, rival);
    if (astray) return astray;
    const { id: _, readingId, ...brought } = rival;
    const chosen = stands === "brought" ? { id: readingId, ...brought } : standing;
    const settled = [...route.rivalReading.values()].filter((one) => one.readingId === readingId);
    const isOther = standing && !saysSame(standing, chosen ?? null);
    return ok([
      ...(chosen ? [rowEdit("reading", standing ?? null, { ...chosen, packetId: null, madeOn: "" })] : []),
      ...settled.map((one) => rowEdit("rivalReading", one, null)),
      ...(isOther ? acceptedOf(route, readingId) : []),
    ]);
  },
};

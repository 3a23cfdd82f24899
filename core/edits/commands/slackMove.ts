import { z } from "zod";
import { amount, id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { stationM } from "../../plant/cablePath.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { cableTag, coilTag } from "../tags.ts";

const input = z.strictObject({ slackId: id, spanId: id, offsetM: amount });

export const slackMove: Command<z.infer<typeof input>> = {
  id: "slack.move",
  input,
  label: ({ slackId }, route) => `Move the coil ${coilTag(route, slackId)}`,
  run(route, { slackId, spanId, offsetM }) {
    const before = route.slack.get(slackId);
    if (!before) return missing("coil", slackId);
    const span = route.span.get(spanId);
    if (!span) return missing("span", spanId);
    if (offsetM > span.lengthM)
      return fail("off-span", "That point is past the far pole.", slackId, "Choose a point between the two poles.");
    if (stationM(openPlant(route), before.cableId, spanId, offsetM) === null)
      return fail(
        "off-cable",
        `Cable ${cableTag(route, before.cableId)} does not pass that span.`,
        spanId,
        "Choose a span of its cable.",
      );
    return ok([{ table: "slack", id: slackId, before, after: { ...before, spanId, offsetM } }]);
  },
};

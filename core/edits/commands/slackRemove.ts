import { z } from "zod";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { coilTag } from "../tags.ts";

const input = z.strictObject({ slackId: id });

export const slackRemove: Command<z.infer<typeof input>> = {
  id: "slack.remove",
  input,
  label: ({ slackId }, route) => `Remove the coil ${coilTag(route, slackId)}`,
  run(route, { slackId }) {
    const before = route.slack.get(slackId);
    if (!before) return missing("coil", slackId);
    return ok([{ table: "slack", id: slackId, before, after: null }]);
  },
};

import { z } from "zod";
import { id, positive } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { coilTag } from "../tags.ts";

const input = z.strictObject({ slackId: id, storedM: positive });

export const slackSet: Command<z.infer<typeof input>> = {
  id: "slack.set",
  input,
  label: ({ slackId }, route) => `Change the length of the coil ${coilTag(route, slackId)}`,
  run(route, { slackId, storedM }) {
    const before = route.slack.get(slackId);
    if (!before) return missing("coil", slackId);
    return ok([{ table: "slack", id: slackId, before, after: { ...before, storedM } }]);
  },
};

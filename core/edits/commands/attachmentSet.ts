import { z } from "zod";
import { id, positive } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { poleTag } from "../tags.ts";

const input = z.strictObject({ attachmentId: id, heightM: positive });

export const attachmentSet: Command<z.infer<typeof input>> = {
  id: "attachment.set",
  input,
  label: ({ attachmentId }, route) =>
    `Change attachment height on pole ${poleTag(route, route.attachment.get(attachmentId)?.poleId ?? attachmentId)}`,
  run(route, { attachmentId, heightM }) {
    const before = route.attachment.get(attachmentId);
    if (!before) return missing("attachment", attachmentId);
    return ok([{ table: "attachment", id: attachmentId, before, after: { ...before, heightM } }]);
  },
};

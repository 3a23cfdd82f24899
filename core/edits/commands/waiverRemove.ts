import { z } from "zod";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";

const input = z.strictObject({ waiverId: id });

export const waiverRemove: Command<z.infer<typeof input>> = {
  id: "waiver.remove",
  input,
  label: ({ waiverId }, route) => `Remove the waiver of ${route.waiver.get(waiverId)?.ruleId ?? waiverId}`,
  run(route, { waiverId }) {
    const before = route.waiver.get(waiverId);
    if (!before) return missing("waiver", waiverId);
    return ok([{ table: "waiver", id: waiverId, before, after: null }]);
  },
};

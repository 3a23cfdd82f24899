import { z } from "zod";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { dropTag } from "../tags.ts";

const input = z.strictObject({ dropId: id });

export const dropRemove: Command<z.infer<typeof input>> = {
  id: "drop.remove",
  input,
  label: ({ dropId }, route) => `Remove the drop from terminal ${dropTag(route, dropId)}`,
  run(route, { dropId }) {
    const before = route.drop.get(dropId);
    if (!before) return missing("drop", dropId);
    return ok([{ table: "drop", id: dropId, before, after: null }]);
  },
};

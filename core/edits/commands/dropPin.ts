import { z } from "zod";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { dropTag } from "../tags.ts";

const input = z.strictObject({ dropId: id, pinned: z.boolean() });

/** Keeps a drop on its port, and its terminal in place, in every later layout; or lets it go again. */
export const dropPin: Command<z.infer<typeof input>> = {
  id: "drop.pin",
  input,
  label: ({ dropId, pinned }, route) => `${pinned ? "Pin" : "Unpin"} the drop on terminal ${dropTag(route, dropId)}`,
  run(route, { dropId, pinned }) {
    const before = route.drop.get(dropId);
    if (!before) return missing("drop", dropId);
    return ok([{ table: "drop", id: dropId, before, after: { ...before, pinned } }]);
  },
};

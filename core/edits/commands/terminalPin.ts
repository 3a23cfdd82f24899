import { z } from "zod";
import { id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalTag } from "../tags.ts";

const input = z.strictObject({ terminalId: id, pinned: z.boolean() });

/** Keeps a terminal where it is in every later layout, or lets it go again. */
export const terminalPin: Command<z.infer<typeof input>> = {
  id: "terminal.pin",
  input,
  label: ({ terminalId, pinned }, route) => `${pinned ? "Pin" : "Unpin"} terminal ${terminalTag(route, terminalId)}`,
  run(route, { terminalId, pinned }) {
    const before = route.terminal.get(terminalId);
    if (!before) return missing("terminal", terminalId);
    return ok([{ table: "terminal", id: terminalId, before, after: { ...before, pinned } }]);
  },
};

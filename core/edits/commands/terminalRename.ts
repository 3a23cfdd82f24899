import { z } from "zod";
import { id, label } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalTag } from "../tags.ts";

const input = z.strictObject({ terminalId: id, name: label });

export const terminalRename: Command<z.infer<typeof input>> = {
  id: "terminal.rename",
  input,
  label: ({ terminalId, name }, route) => `Rename terminal ${terminalTag(route, terminalId)} to ${name}`,
  run(route, { terminalId, name }) {
    const before = route.terminal.get(terminalId);
    if (!before) return missing("terminal", terminalId);
    return ok([{ table: "terminal", id: terminalId, before, after: { ...before, name } }]);
  },
};

import { z } from "zod";
import { id, ordinal } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalWithPort } from "../portFree.ts";
import { terminalTag, unitTag } from "../tags.ts";

const input = z.strictObject({ dropId: id, terminalId: id, port: ordinal });

export const dropMove: Command<z.infer<typeof input>> = {
  id: "drop.move",
  input,
  label: ({ dropId, terminalId, port }, route) =>
    `Move the drop of ${unitTag(route, route.drop.get(dropId)?.livingUnitId ?? dropId)} to terminal ${terminalTag(route, terminalId)} port ${port}`,
  run(route, { dropId, terminalId, port }) {
    const before = route.drop.get(dropId);
    if (!before) return missing("drop", dropId);
    const terminal = terminalWithPort(route, terminalId, port, dropId);
    if (!terminal.ok) return terminal;
    return ok([{ table: "drop", id: dropId, before, after: { ...before, terminalId, port } }]);
  },
};

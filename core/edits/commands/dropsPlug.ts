import { z } from "zod";
import { routeWith, rowDifferences } from "../../layout/rowSet.ts";
import { id, ordinal } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import type { Drop } from "../../model/tables.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalWithPort } from "../portFree.ts";
import { unitTag } from "../tags.ts";

const input = z.strictObject({
  plugs: z
    .array(z.strictObject({ dropId: id, port: ordinal }))
    .min(1)
    .readonly(),
});

/** Plugs drops into other ports of their own terminals, all at once, so that each may take a port another of them leaves. */
export const dropsPlug: Command<z.infer<typeof input>> = {
  id: "drops.plug",
  input,
  label: ({ plugs }, route) =>
    `Plug ${plugs.map(({ dropId, port }) => `${unitTag(route, route.drop.get(dropId)?.livingUnitId ?? dropId)} into port ${port}`).join(", ")}`,
  run(route, { plugs }) {
    const before: Drop[] = [];
    const plugged = new Map<string, Drop>();
    for (const { dropId, port } of plugs) {
      const drop = route.drop.get(dropId);
      if (!drop) return missing("drop", dropId);
      before.push(drop);
      plugged.set(dropId, { ...drop, port });
    }
    const rows = rowDifferences("drop", before, [...plugged.values()]);
    const after = routeWith(route, rows);
    for (const { id: dropId, terminalId, port } of plugged.values()) {
      const terminal = terminalWithPort(after, terminalId, port, dropId);
      if (!terminal.ok) return terminal;
    }
    return ok(rows);
  },
};

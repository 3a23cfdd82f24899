import { z } from "zod";
import { count, id, words } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { openPlant } from "../../plant/plant.ts";
import { portCounts } from "../../plant/terminalView.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalTag } from "../tags.ts";

const input = z.strictObject({ terminalId: id, reservedPortCount: count, reservedFor: words.optional() });

/** Holds ports of a terminal for whoever comes later, such as a vacant lot; the terminal stays where it is in every later layout. */
export const terminalReserve: Command<z.infer<typeof input>> = {
  id: "terminal.reserve",
  input,
  label: ({ terminalId, reservedPortCount }, route) =>
    `Reserve ${reservedPortCount} ${reservedPortCount === 1 ? "port" : "ports"} of terminal ${terminalTag(route, terminalId)}`,
  run(route, { terminalId, reservedPortCount, reservedFor }) {
    const before = route.terminal.get(terminalId);
    if (!before) return missing("terminal", terminalId);
    const { total, used } = portCounts(openPlant(route), terminalId);
    if (reservedPortCount > total - used)
      return fail(
        "too-few-ports",
        `Terminal ${before.name} has ${total - used} of its ${total} ports free; ${reservedPortCount} cannot be reserved.`,
        terminalId,
        "Reserve fewer, choose a larger terminal, or move drops to another one first.",
      );
    const after = { ...before, reservedPortCount, reservedFor: reservedFor ?? before.reservedFor };
    return ok([{ table: "terminal", id: terminalId, before, after }]);
  },
};

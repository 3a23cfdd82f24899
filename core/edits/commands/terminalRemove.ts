import { z } from "zod";
import { id } from "../../model/fields.ts";
import { openPlant } from "../../plant/plant.ts";
import { removalOf } from "../cascade.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalTag } from "../tags.ts";

const input = z.strictObject({ terminalId: id });

/** Takes a terminal down with its splitters, coil, drops and the use of its fibers. */
export const terminalRemove: Command<z.infer<typeof input>> = {
  id: "terminal.remove",
  input,
  label: ({ terminalId }, route) => `Remove terminal ${terminalTag(route, terminalId)}`,
  run(route, { terminalId }) {
    if (!route.terminal.has(terminalId)) return missing("terminal", terminalId);
    return removalOf(openPlant(route), [{ table: "terminal", id: terminalId }]);
  },
};

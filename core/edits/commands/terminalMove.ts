import { z } from "zod";
import { id, positive } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { stationM } from "../../plant/cablePath.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { movedTerminalRows } from "../moveTerminal.ts";
import { cableTag, terminalTag } from "../tags.ts";

const input = z.strictObject({ terminalId: id, spanId: id, offsetM: positive });

export const terminalMove: Command<z.infer<typeof input>> = {
  id: "terminal.move",
  input,
  label: ({ terminalId }, route) => `Move terminal ${terminalTag(route, terminalId)}`,
  run(route, { terminalId, spanId, offsetM }) {
    const before = route.terminal.get(terminalId);
    if (!before) return missing("terminal", terminalId);
    const span = route.span.get(spanId);
    if (!span) return missing("span", spanId);
    if (offsetM >= span.lengthM)
      return fail("off-span", "That point is past the far pole.", terminalId, "Choose a point between the two poles.");
    const plant = openPlant(route);
    if (stationM(plant, before.cableId, spanId, offsetM) === null)
      return fail(
        "off-cable",
        `Cable ${cableTag(route, before.cableId)}, which feeds the terminal, does not pass that span.`,
        spanId,
        "Choose a span of its cable, or hang a new terminal on the other cable.",
      );
    return ok(movedTerminalRows(plant, before, spanId, offsetM));
  },
};

import { z } from "zod";
import { evenDrops } from "../../layout/evenDrops.ts";
import { rowDifferences } from "../../layout/rowSet.ts";
import { amount, id } from "../../model/fields.ts";
import { ok } from "../../model/result.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";

const input = z.strictObject({
  /** Terminals to even out; all of the route when left out. */
  terminalIds: z.array(id).min(2).optional(),
  /** All drops together may become longer by this, m. */
  extraDropM: amount,
});

/** Evens out how full terminals are by moving drops between them, within reach and a limit on the length of drop. */
export const dropsEven: Command<z.infer<typeof input>> = {
  id: "drops.even",
  input,
  label: ({ terminalIds }) => (terminalIds ? `Even out ${terminalIds.length} terminals` : "Even out all terminals"),
  run(route, { terminalIds, extraDropM }) {
    const gone = terminalIds?.find((one) => !route.terminal.has(one));
    if (gone !== undefined) return missing("terminal", gone);
    const plant = openPlant(route);
    const moved = evenDrops(plant, [...new Set(terminalIds ?? route.terminal.keys())], extraDropM);
    const before = moved.map((one) => plant.rowOf("drop", one.id));
    return ok(rowDifferences("drop", before, moved));
  },
};

import { z } from "zod";
import { portsAt } from "../../layout/portsAt.ts";
import { rowDifferences } from "../../layout/rowSet.ts";
import { id } from "../../model/fields.ts";
import { fail, ok, type Result } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import { openPlant, type Plant } from "../../plant/plant.ts";
import { portCounts } from "../../plant/terminalView.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalTag, unitTag } from "../tags.ts";

const input = z.strictObject({ dropIds: z.array(id).min(1), terminalId: id });

/**
 * Moves drops to a terminal, each to a free port so that they do not cross; drops that are there already keep their ports. A drop
 * beyond reach moves too: the findings tell it.
 */
export const dropsMove: Command<z.infer<typeof input>> = {
  id: "drops.move",
  input,
  label: ({ dropIds: [first = "", ...others], terminalId }, route) => {
    const unit = unitTag(route, route.drop.get(first)?.livingUnitId ?? first);
    const more = others.length === 0 ? "" : ` and ${others.length} more`;
    return `Move ${unit}${more} to terminal ${terminalTag(route, terminalId)}`;
  },
  run(route, { dropIds, terminalId }) {
    const gone = dropIds.find((one) => !route.drop.has(one));
    if (gone !== undefined) return missing("drop", gone);
    if (!route.terminal.has(terminalId)) return missing("terminal", terminalId);
    return movedDrops(openPlant(route), dropIds, terminalId);
  },
};

/** The rows that move drops to a terminal, or the fault where it has too few ports for them. */
export function movedDrops(plant: Plant, dropIds: readonly string[], terminalId: string): Result<RowChange[]> {
  const there = plant.where("drop", "terminalId", terminalId).map((one) => plant.rowOf("drop", one));
  const coming = [...new Set(dropIds)]
    .map((one) => plant.rowOf("drop", one))
    .filter((one) => one.terminalId !== terminalId);
  const moved = portsAt(plant, terminalId, coming, there);
  const { total, reserved } = portCounts(plant, terminalId);
  if (moved.length < coming.length)
    return fail(
      "too-few-ports",
      `Terminal ${plant.rowOf("terminal", terminalId).name} has ${moved.length} of its ${total} ports free for ${coming.length} more${reserved === 0 ? "" : `; ${reserved} reserved`}.`,
      terminalId,
      "Choose a larger terminal or move fewer.",
    );
  return ok(rowDifferences("drop", coming, moved));
}

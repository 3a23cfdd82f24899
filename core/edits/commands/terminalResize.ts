import { z } from "zod";
import { inWriteOrder, rowDifferences } from "../../layout/rowSet.ts";
import { splitterRows } from "../../layout/terminalRows.ts";
import { id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { Drop, FiberUse, Splitter } from "../../model/tables.ts";
import { openPlant, type Plant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { terminalTag } from "../tags.ts";

const input = z.strictObject({ terminalId: id, terminalModelId: id });

/**
 * Swaps a terminal for another size. Splitters are remade and keep the fibers of their places; drops keep their ports where the new
 * face has them and take the lowest free ones where it has not.
 */
export const terminalResize: Command<z.infer<typeof input>> = {
  id: "terminal.resize",
  input,
  label: ({ terminalId, terminalModelId }, route) =>
    `Change terminal ${terminalTag(route, terminalId)} to ${route.terminalModel.get(terminalModelId)?.name ?? terminalModelId}`,
  run(route, { terminalId, terminalModelId }) {
    const before = route.terminal.get(terminalId);
    if (!before) return missing("terminal", terminalId);
    const model = route.terminalModel.get(terminalModelId);
    if (!model) return missing("terminal model", terminalModelId);
    const plant = openPlant(route);
    const drops = plant.where("drop", "terminalId", terminalId).map((one) => plant.rowOf("drop", one));
    const heldCount = drops.length + before.reservedPortCount;
    if (heldCount > model.portCount)
      return fail(
        "too-few-ports",
        `Terminal ${before.name} has ${drops.length} drops and ${before.reservedPortCount} reserved ports; ${model.name} has ${model.portCount} ports.`,
        terminalId,
        "Choose a larger terminal, move drops to another one, or reserve fewer first.",
      );
    const splitters = plant.where("splitter", "terminalId", terminalId).map((one) => plant.rowOf("splitter", one));
    const { legCount } = plant.rowOf("splitterType", model.splitterTypeId);
    const remade = splitterRows(terminalId, model, legCount);
    const uses = plant.where("fiberUse", "terminalId", terminalId).map((one) => plant.rowOf("fiberUse", one));
    return ok(
      inWriteOrder([
        { table: "terminal", id: terminalId, before, after: { ...before, terminalModelId } },
        ...rowDifferences("splitter", splitters, remade),
        ...rowDifferences("drop", drops, fittedDrops(drops, model.portCount)),
        ...rowDifferences("fiberUse", uses, refed(plant, uses, remade)),
      ]),
    );
  },
};

function fittedDrops(drops: readonly Drop[], portCount: number): Drop[] {
  const taken = new Set(drops.map((one) => one.port));
  return drops.map((drop) => {
    if (drop.port <= portCount) return drop;
    let port = 1;
    while (taken.has(port)) port += 1;
    taken.add(port);
    return { ...drop, port };
  });
}

/** Uses on the remade splitters by place; those of places that are gone are freed. */
function refed(plant: Plant, uses: readonly FiberUse[], remade: readonly Splitter[]): FiberUse[] {
  return uses.flatMap((use) => {
    const place = use.splitterId === null ? 0 : plant.rowOf("splitter", use.splitterId).position;
    const splitter = remade.find((one) => one.position === place);
    return splitter ? [{ ...use, splitterId: splitter.id }] : [];
  });
}

import { z } from "zod";
import { id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { cableTag } from "../tags.ts";

const input = z.strictObject({ cableId: id, cableTypeId: id });

/** Swaps a cable for another size; fiber numbers stay, and a reel of the old type's length becomes one of the new type's. */
export const cableResize: Command<z.infer<typeof input>> = {
  id: "cable.resize",
  input,
  label: ({ cableId, cableTypeId }, route) =>
    `Change cable ${cableTag(route, cableId)} to ${route.cableType.get(cableTypeId)?.name ?? cableTypeId}`,
  run(route, { cableId, cableTypeId }) {
    const before = route.cable.get(cableId);
    if (!before) return missing("cable", cableId);
    const type = route.cableType.get(cableTypeId);
    if (!type) return missing("cable type", cableTypeId);
    const plant = openPlant(route);
    const own = plant.where("fiberUse", "cableId", cableId).map((one) => plant.rowOf("fiberUse", one).fiber);
    const spliced = plant
      .where("fiberUse", "lateralCableId", cableId)
      .map((one) => plant.rowOf("fiberUse", one).lateralFiber ?? 0);
    const highest = Math.max(0, ...own, ...spliced);
    if (highest > type.fiberCount)
      return fail(
        "fibers-in-use",
        `Fiber ${highest} of cable ${before.name} is in use and ${type.name} has ${type.fiberCount}.`,
        cableId,
        "Choose a larger cable or free its high fibers first.",
      );
    const wasStandard = before.reelLengthM === plant.rowOf("cableType", before.cableTypeId).reelLengthM;
    const reelLengthM = wasStandard ? type.reelLengthM : before.reelLengthM;
    return ok([{ table: "cable", id: cableId, before, after: { ...before, cableTypeId, reelLengthM } }]);
  },
};

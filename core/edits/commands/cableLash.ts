import { z } from "zod";
import { id, label } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import { cablePath } from "../../plant/cablePath.ts";
import { freeId } from "../../plant/freeId.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { cableTag } from "../tags.ts";

const input = z.strictObject({ cableId: id, name: label, cableTypeId: id, alongCableId: id });

/** Lashes one cable more to the strand, all the way another one goes; it comes from where that one comes from. */
export const cableLash: Command<z.infer<typeof input>> = {
  id: "cable.lash",
  input,
  label: ({ name, alongCableId }, route) => `Lash cable ${name} along ${cableTag(route, alongCableId)}`,
  run(route, { cableId, name, cableTypeId, alongCableId }) {
    const along = route.cable.get(alongCableId);
    if (!along) return missing("cable", alongCableId);
    const type = route.cableType.get(cableTypeId);
    if (!type) return missing("cable type", cableTypeId);
    if (route.cable.has(cableId))
      return fail("taken-id", "There is already a cable with this id.", cableId, "Give the new one another id.");
    const plant = openPlant(route);
    const { fromClosureId } = along;
    const after = { id: cableId, name, cableTypeId, fromClosureId, reelLengthM: type.reelLengthM };
    const runs = cablePath(plant, alongCableId).steps.map(({ spanId, reversed }, index): RowChange => {
      const sequence = index + 1;
      const row = { id: freeId(plant, "cableRun", `${cableId}-run-${sequence}`), cableId, spanId, sequence, reversed };
      return { table: "cableRun", id: row.id, before: null, after: row };
    });
    return ok([{ table: "cable", id: cableId, before: null, after }, ...runs]);
  },
};

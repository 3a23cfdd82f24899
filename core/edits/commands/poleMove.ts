import { z } from "zod";
import { figure, id } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import type { RowChange } from "../../model/rowChange.ts";
import { planeDistanceM, spansAtPole } from "../../plant/geometry.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { respannedRows } from "../respan.ts";
import { poleTag, spanTag } from "../tags.ts";

const input = z.strictObject({ poleId: id, eastM: figure, northM: figure });

/** Moves a pole; the spans follow, and what hangs near a pole keeps its distance from that pole. */
export const poleMove: Command<z.infer<typeof input>> = {
  id: "pole.move",
  input,
  label: ({ poleId }, route) => `Move pole ${poleTag(route, poleId)}`,
  run(route, { poleId, eastM, northM }) {
    const before = route.pole.get(poleId);
    if (!before) return missing("pole", poleId);
    const after = { ...before, eastM, northM };
    const plant = openPlant(route);
    const rows: RowChange[] = [{ table: "pole", id: poleId, before, after }];
    for (const spanId of spansAtPole(plant, poleId)) {
      const span = plant.rowOf("span", spanId);
      const farId = span.fromPoleId === poleId ? span.toPoleId : span.fromPoleId;
      const lengthM = planeDistanceM(after, plant.rowOf("pole", farId));
      const moved = respannedRows(plant, spanId, lengthM);
      if (moved === null)
        return fail(
          "no-room",
          `Span ${spanTag(route, spanId)} would be too short for what hangs in it.`,
          spanId,
          "Move the pole less, or take down what hangs there first.",
        );
      rows.push(...moved);
    }
    return ok(rows);
  },
};

import { z } from "zod";
import { id, positive } from "../../model/fields.ts";
import { fail, ok } from "../../model/result.ts";
import { openPlant } from "../../plant/plant.ts";
import type { Command } from "../command.ts";
import { missing } from "../missing.ts";
import { respannedRows } from "../respan.ts";
import { spanTag } from "../tags.ts";

const input = z.strictObject({ spanId: id, lengthM: positive });

/** Gives a span the length somebody measured; what hangs near a pole keeps its distance from that pole. */
export const spanMeasure: Command<z.infer<typeof input>> = {
  id: "span.measure",
  input,
  label: ({ spanId }, route) => `Change the length of span ${spanTag(route, spanId)}`,
  run(route, { spanId, lengthM }) {
    if (!route.span.has(spanId)) return missing("span", spanId);
    const rows = respannedRows(openPlant(route), spanId, lengthM);
    if (rows) return ok(rows);
    return fail(
      "no-room",
      `Span ${spanTag(route, spanId)} would be too short for what hangs in it.`,
      spanId,
      "Look at the length again, or take down what hangs there first.",
    );
  },
};

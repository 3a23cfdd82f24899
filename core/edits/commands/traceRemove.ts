import { z } from "zod";
import { id } from "../../model/fields.ts";
import { openPlant } from "../../plant/plant.ts";
import { removalOf } from "../cascade.ts";
import type { Command } from "../command.ts";

const input = z.strictObject({ traceIds: z.array(id).min(1).max(5000).readonly() });

/** Takes traces off the route with what they show. */
export const traceRemove: Command<z.infer<typeof input>> = {
  id: "trace.remove",
  input,
  label: ({ traceIds }, route) =>
    traceIds.length === 1
      ? `Remove trace ${route.trace.get(traceIds[0] ?? "")?.fileName ?? ""}`
      : `Remove ${traceIds.length} traces`,
  run: (route, { traceIds }) =>
    removalOf(
      openPlant(route),
      [...new Set(traceIds)].map((traceId) => ({ table: "trace", id: traceId })),
    ),
};
